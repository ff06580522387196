package org.adumbrate.raster.decode.jpeg;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Builds JPEG files with the platform's writer: flat squares of 16 x 16 pixels, side by side. */
public final class JpegBytes {
    private JpegBytes() {}

    public static byte[] write(boolean progressive, int... colours) throws IOException {
        return write(BufferedImage.TYPE_INT_RGB, progressive, colours);
    }

    public static byte[] writeGrey(int... greys) throws IOException {
        return write(BufferedImage.TYPE_BYTE_GRAY, false, greys);
    }

    private static byte[] write(int imageType, boolean progressive, int... values) throws IOException {
        BufferedImage image = new BufferedImage(16 * values.length, 16, imageType);
        for (int y = 0; y < 16; y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (imageType == BufferedImage.TYPE_BYTE_GRAY) {
                    image.getRaster().setSample(x, y, 0, values[x / 16]);
                } else {
                    image.setRGB(x, y, values[x / 16]);
                }
            }
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(0.98f);
        param.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        }
        writer.dispose();
        return bytes.toByteArray();
    }

    /** The file with a segment put in after its start marker. */
    static byte[] with(byte[] jpeg, int marker, String word, byte[] body) {
        byte[] letters = word.getBytes(StandardCharsets.ISO_8859_1);
        return ByteBuffer.allocate(jpeg.length + 4 + letters.length + body.length)
                .put(jpeg, 0, 2)
                .put((byte) 0xff)
                .put((byte) marker)
                .putShort((short) (2 + letters.length + body.length))
                .put(letters)
                .put(body)
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }
}
