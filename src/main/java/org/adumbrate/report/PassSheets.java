package org.adumbrate.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.prepare.passes.PassRequest;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.prepare.passes.PreparedPass;
import org.adumbrate.prepare.scene.SheetDepth;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.PassImage;
import org.adumbrate.registration.Placement;
import org.adumbrate.registration.RegistrationPicture;
import org.adumbrate.report.page.PassSheet;
import org.adumbrate.report.page.Picture;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.PlacedPass;

/** The passes of a sheet as its report shows them. */
final class PassSheets {
    private static final int INSET_PX = 480;

    private final SheetPictures pictures;
    private final Optional<LinePattern> lines;
    private final Function<Path, String> names;

    /** @param names how files are called in the report */
    PassSheets(SheetPictures pictures, Optional<LinePattern> lines, Function<Path, String> names) {
        this.pictures = pictures;
        this.lines = lines;
        this.names = names;
    }

    List<PassSheet> of(PassSet passes, Optional<SheetDepth> depth) throws IOException {
        List<PassSheet> sheets = new ArrayList<>();
        for (PreparedPass pass : passes.prepared()) {
            sheets.add(printed(pass));
        }
        if (passes.figureLight().isPresent()) {
            sheets.add(new PassSheet(
                    "Shadows of the figures",
                    "Computed: how much of the sun arrives past the figures. They print in the tone of the sun shadow.",
                    pictures.light(passes.figureLight().get()),
                    Optional.empty(),
                    Optional.empty()));
        }
        if (depth.isPresent()) {
            sheets.add(depth(depth.get()));
        }
        return sheets;
    }

    private PassSheet printed(PreparedPass pass) throws IOException {
        PassRequest request = pass.request();
        long percent = Math.round(100 * pass.look().opacity());
        return new PassSheet(
                names.apply(request.file()),
                told(request.role()) + " It prints at " + percent + "\u00a0% of this strength.",
                pictures.pass(pass),
                Optional.of(pass.placement()),
                inset(pass.placement(), () -> pass.pixels().image()));
    }

    private static String told(PassRole role) {
        return switch (role) {
            case SHADOW -> "Sun shadow: how much of the sun arrives past the building.";
            case FIGURE_SHADOW -> "Figures' shadow: how much of the sun arrives past the figures.";
            case OCCLUSION -> "Occlusion: how much of the sky's light arrives.";
        };
    }

    private PassSheet depth(SheetDepth depth) throws IOException {
        PassImage image = depth.image();
        Affine<RasterPoint, RasterPoint> blocks =
                Affine.scaling(Space.RASTER, Space.RASTER, image.reduction(), image.reduction());
        PlacedPass placed = new PlacedPass(
                PassRole.OCCLUSION,
                new GreyRows(image.grey()),
                blocks.then(depth.placement().passToSheet()));
        return new PassSheet(
                names.apply(depth.file()),
                "Depth: how far everything is, from near (dark) to far (light). It does not print; figures and lines are measured by it.",
                pictures.grey(placed),
                Optional.of(depth.placement()),
                inset(depth.placement(), () -> image));
    }

    private interface ImageSource {
        PassImage take() throws IOException;
    }

    /** Nothing where the pass was laid down without looking at it. */
    private Optional<Picture> inset(Placement placement, ImageSource look) throws IOException {
        if (lines.isEmpty() || !Double.isFinite(placement.residualMm())) {
            return Optional.empty();
        }
        return Optional.of(pictures.pixels(RegistrationPicture.worst(placement, lines.get(), look.take(), INSET_PX)));
    }
}
