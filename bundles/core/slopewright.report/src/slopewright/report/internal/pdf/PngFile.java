package slopewright.report.internal.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes pictures as Portable Network Graphics. */
public final class PngFile {

    private static final String NATIVE = "javax_imageio_png_1.0";

    private PngFile() {
    }

    /**
     * Writes a picture.
     *
     * @param image    the picture
     * @param madeFrom what it was made from, kept in the file as text; none where it is empty
     * @return the file; the same picture gives the same bytes
     * @throws IOException where it cannot be written
     */
    public static byte[] bytes(BufferedImage image, String madeFrom) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        IIOMetadata metadata = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
        if (!madeFrom.isEmpty()) {
            IIOMetadataNode entry = new IIOMetadataNode("tEXtEntry");
            entry.setAttribute("keyword", "Source");
            entry.setAttribute("value", madeFrom);
            IIOMetadataNode texts = new IIOMetadataNode("tEXt");
            texts.appendChild(entry);
            IIOMetadataNode root = new IIOMetadataNode(NATIVE);
            root.appendChild(texts);
            metadata.mergeTree(NATIVE, root);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
