package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssScanner;

/** Where transforms put an element (CSS Transforms 1, 5 to 8). */
final class SvgPlacing {
    private SvgPlacing() {}

    /** Finds the bounding box of an element in its user space. */
    @FunctionalInterface
    interface Box {
        /**
         * The box; nothing if the element draws nothing.
         *
         * @param origin where to look from
         */
        Optional<Extent> of(SvgScene origin) throws InputFault;
    }

    /** A scene moved by the transform that its style states. */
    static SvgScene placed(SvgScene scene, Box box) throws InputFault {
        Optional<AffineTransform> transform = transform(scene);
        if (transform.isEmpty()) {
            return scene;
        }
        String origin = scene.style().stated("transform-origin").orElse("");
        if (origin.isEmpty() && scene.style().stated("transform-box").isEmpty()) {
            return scene.moved(transform.get());
        }
        Extent reference = new Extent(0, 0, scene.width(), scene.height());
        boolean ownBox = scene.style()
                .stated("transform-box")
                .map(value -> value.strip().toLowerCase(Locale.ROOT))
                .filter(value -> value.equals("fill-box") || value.equals("stroke-box") || value.equals("content-box"))
                .isPresent();
        if (ownBox) {
            reference = box.of(scene).orElse(new Extent(0, 0, 0, 0));
        }
        double[] at = origin(origin, reference, scene, origin.isEmpty() ? 0 : Double.NaN);
        return scene.moved(about(transform.get(), at[0], at[1]));
    }

    /** The outermost element is a box of the page, and its transform goes by the middle of it unless it says otherwise. */
    static AffineTransform ofRoot(SvgScene scene, double widthPx, double heightPx) {
        Optional<AffineTransform> transform = transform(scene);
        if (transform.isEmpty()) {
            return new AffineTransform();
        }
        String origin = scene.style().stated("transform-origin").orElse("50% 50%");
        double[] at = origin(origin, new Extent(0, 0, widthPx, heightPx), scene, Double.NaN);
        return about(transform.get(), at[0], at[1]);
    }

    private static Optional<AffineTransform> transform(SvgScene scene) {
        return scene.style()
                .stated("transform")
                .flatMap(text -> SvgTransform.parse(text, scene.style().basis(0)));
    }

    private static AffineTransform about(AffineTransform transform, double x, double y) {
        AffineTransform all = AffineTransform.getTranslateInstance(x, y);
        all.concatenate(transform);
        all.translate(-x, -y);
        return all;
    }

    /** @param unstated where the origin lies if it is not stated; not a number for the place that the words name */
    private static double[] origin(String text, Extent box, SvgScene scene, double unstated) {
        double[] at = {Double.NaN, Double.NaN};
        CssScanner scanner = new CssScanner(text);
        for (int k = 0; k < 2 && scanner.hasMore(); k++) {
            Optional<CssLength> length = scanner.hasNumber() ? CssLength.read(scanner) : Optional.empty();
            if (length.isPresent()) {
                double whole = k == 0 ? box.width() : box.height();
                at[k] = (k == 0 ? box.left() : box.top())
                        + length.get().user(scene.style().basis(whole));
            } else {
                word(scanner.word().toLowerCase(Locale.ROOT), box, at);
            }
        }
        double x = Double.isNaN(unstated) ? box.left() + box.width() / 2 : box.left() + unstated;
        double y = Double.isNaN(unstated) ? box.top() + box.height() / 2 : box.top() + unstated;
        return new double[] {Double.isNaN(at[0]) ? x : at[0], Double.isNaN(at[1]) ? y : at[1]};
    }

    private static void word(String word, Extent box, double[] at) {
        switch (word) {
            case "left" -> at[0] = box.left();
            case "right" -> at[0] = box.right();
            case "top" -> at[1] = box.top();
            case "bottom" -> at[1] = box.bottom();
            default -> {
                // center, where it lies anyway
            }
        }
    }
}
