package org.adumbrate.build;

import org.adumbrate.figure.SceneDepth;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/** A depth pass as what stands before figures. */
record DepthScene(DepthMap depth) implements SceneDepth {
    @Override
    public PixelSize size() {
        return depth.size();
    }

    @Override
    public double depthAt(int column, int row) {
        return 1 / (double) depth.inverse(column, row);
    }

    @Override
    public Affine<RasterPoint, SheetPoint> toSheet() {
        return depth.toPixels().inverse();
    }
}
