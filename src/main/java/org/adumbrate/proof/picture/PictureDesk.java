package org.adumbrate.proof.picture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.drawing.InkedTile;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.picture.HeldPass;
import org.adumbrate.prepare.picture.SheetPicture;
import org.adumbrate.raster.SrgbCurve;
import org.adumbrate.underlay.HeldLight;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.RegionMask;
import org.adumbrate.underlay.WhitePoint;

/** Tells a page of what to compose a picture, and hands out what it has not got. */
public final class PictureDesk implements PictureSource {
    /** What share of each pixel a pass counts for; nothing where it is all of it everywhere. */
    private record Shares(Optional<byte[]> bytes) {}

    private final Holdings holdings = new Holdings();

    /** Until a sheet has been ready once, a page would rather have the lines alone than wait. */
    private volatile boolean wasReady;

    @Override
    public Object recipe(Edition edition, PictureView view, boolean coarse) throws IOException, Refusal {
        if (coarse && !wasReady && !edition.isReady()) {
            return edition.makeOfLines(
                    (lines, run) -> recipe(SheetPicture.of(lines, on(lines, view), run), false, run));
        }
        return edition.make((sheet, run) -> {
            wasReady = true;
            SheetPicture picture = SheetPicture.of(sheet, on(sheet, view), run, coarse);
            return recipe(picture, picture.underlay().isExact(), run);
        });
    }

    private static Canvas on(PreparedSheet sheet, PictureView view) {
        return new Canvas(sheet.size(), view.whole(), view.window());
    }

    @Override
    public Optional<byte[]> held(List<String> ids) {
        return holdings.bytes(ids);
    }

    private Map<String, Object> recipe(SheetPicture picture, boolean isExact, Run run) throws IOException {
        Holdings.Recipe held = holdings.begin();
        Map<String, Object> recipe = new LinkedHashMap<>();
        recipe.put("exact", isExact);
        recipe.put("whole", numbers(picture.underlay().canvas().whole()));
        recipe.put("window", numbers(picture.underlay().canvas().window()));
        recipe.put("channels", picture.underlay().channels());
        recipe.put("shadowTone", picture.underlay().shadowTone());
        List<Object> passes = new ArrayList<>();
        for (HeldPass pass : picture.underlay().passes()) {
            passes.add(pass(pass, picture, held, run));
        }
        recipe.put("passes", passes);
        recipe.put("ink", ink(picture, held));
        return recipe;
    }

    private static Map<String, Object> pass(HeldPass pass, SheetPicture picture, Holdings.Recipe held, Run run)
            throws IOException {
        HeldLight light = pass.light();
        PassLook look = pass.look();
        float most = light.most();
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("key", pass.key());
        told.put("role", word(pass.role()));
        told.put("id", held.name(light, () -> Packed.light(light, most)));
        told.put("most", (double) most);
        told.put("channels", Packed.channels(light));
        told.put("whole", numbers(pass.canvas().whole()));
        told.put("window", numbers(pass.canvas().window()));
        told.put("amount", amount(pass, picture.underlay().canvas(), held, run));
        told.put("opacity", look.opacity());
        told.put("opacityKey", pass.opacityKey());
        told.put("white", white(look.white(), Packed.channels(light)));
        told.put(
                "tone",
                look.tone().isStraight() ? null : Packed.floats(look.tone().steps()));
        told.put(
                "tint",
                look.tint()
                        .map(tint -> List.of(linear(tint.red()), linear(tint.green()), linear(tint.blue())))
                        .orElse(null));
        return told;
    }

    private static String amount(HeldPass pass, Canvas canvas, Holdings.Recipe held, Run run) throws IOException {
        if (!pass.canvas().equals(canvas)) {
            return null;
        }
        Optional<RegionMask> mask = pass.look().mask();
        Shares shares = run.of(
                Part.PASS_LIGHT,
                Shares.class,
                List.of(pass.content(), mask),
                () -> new Shares(Packed.shares(pass.light(), mask, canvas)));
        return shares.bytes().map(bytes -> held.name(shares, () -> bytes)).orElse(null);
    }

    private Map<String, Object> ink(SheetPicture picture, Holdings.Recipe held) {
        int channels = picture.ink().all().channels();
        List<Object> tiles = new ArrayList<>();
        for (InkedTile tile : picture.ink().all().inked()) {
            PixelBox box = tile.box();
            tiles.add(List.of(
                    held.name(tile.identity(), () -> Packed.tile(tile, channels)),
                    box.left(),
                    box.top(),
                    box.width(),
                    box.height()));
        }
        Map<String, Object> ink = new LinkedHashMap<>();
        ink.put("channels", channels);
        ink.put("tiles", tiles);
        return ink;
    }

    private static List<Double> white(WhitePoint white, int channels) {
        if (channels == 3) {
            return List.of(1 / white.red(), 1 / white.green(), 1 / white.blue());
        }
        return List.of(white.equals(WhitePoint.ONE) ? 1.0 : 1 / white.luminance());
    }

    private static double linear(int level) {
        return SrgbCurve.decode(level / 255.0);
    }

    private static String word(PassRole role) {
        return switch (role) {
            case SHADOW -> "shadow";
            case FIGURE_SHADOW -> "figure-shadow";
            case OCCLUSION -> "occlusion";
        };
    }

    private static List<Integer> numbers(PixelSize size) {
        return List.of(size.width(), size.height());
    }

    private static List<Integer> numbers(PixelBox box) {
        return List.of(box.left(), box.top(), box.width(), box.height());
    }
}
