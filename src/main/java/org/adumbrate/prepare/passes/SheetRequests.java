package org.adumbrate.prepare.passes;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.sheetfile.Mask;
import org.adumbrate.sheetfile.Passes;
import org.adumbrate.sheetfile.Polygon;
import org.adumbrate.sheetfile.PrintedPass;
import org.adumbrate.sheetfile.Tone;
import org.adumbrate.sheetfile.White;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.RegionMask;
import org.adumbrate.underlay.ToneCurve;
import org.adumbrate.underlay.WhitePoint;

/** Puts what a sheet file asks of its passes into requests. */
public final class SheetRequests {
    private SheetRequests() {}

    /** The printed passes of a sheet. */
    public static List<PassRequest> of(Passes passes, SheetSize sheet) {
        List<PassRequest> requests = new ArrayList<>();
        passes.shadow().ifPresent(pass -> requests.add(request(PassRole.SHADOW, pass, sheet)));
        passes.figureShadow().ifPresent(pass -> requests.add(request(PassRole.FIGURE_SHADOW, pass, sheet)));
        passes.occlusion().ifPresent(pass -> requests.add(request(PassRole.OCCLUSION, pass, sheet)));
        return requests;
    }

    private static PassRequest request(PassRole role, PrintedPass pass, SheetSize sheet) {
        PassLook look = new PassLook(
                pass.opacity().share(),
                WhitePoint.ONE,
                pass.tone().map(SheetRequests::curve).orElse(ToneCurve.STRAIGHT),
                pass.tint(),
                pass.mask().map(SheetRequests::mask));
        boolean measures = pass.white() == White.MEASURED && role != PassRole.FIGURE_SHADOW;
        return new PassRequest(role, pass.file(), look, measures, pass.frame().map(frame -> frame.on(sheet)));
    }

    private static ToneCurve curve(Tone tone) {
        return ToneCurve.through(tone.points().stream()
                .map(point ->
                        new ToneCurve.Point(point.in().share(), point.out().share()))
                .toList());
    }

    private static RegionMask mask(Mask mask) {
        return new RegionMask(corners(mask.inside()), corners(mask.outside()));
    }

    private static List<List<SheetPoint>> corners(List<Polygon> polygons) {
        return polygons.stream().map(Polygon::corners).toList();
    }
}
