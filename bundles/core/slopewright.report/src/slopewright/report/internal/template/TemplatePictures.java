package slopewright.report.internal.template;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

import slopewright.messages.Message;
import slopewright.report.ReportException;

/** Makes pictures of a template new, so that nothing of the file gets into a document but what it shows. */
final class TemplatePictures {

    private static final int MOST_PIXELS = 4000;

    private TemplatePictures() {
    }

    /** Returns a picture as portable network graphics in plain colours; refuses what cannot be read or is too large. */
    static byte[] portable(String name, byte[] bytes) throws ReportException {
        try {
            BufferedImage read = name.endsWith(".svg") ? SvgLogo.read(name, bytes) : decoded(name, bytes);
            BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_ARGB);
            Graphics2D graphics = plain.createGraphics();
            graphics.setComposite(AlphaComposite.Src);
            graphics.drawImage(read, 0, 0, null);
            graphics.dispose();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(plain, "png", out);
            return out.toByteArray();
        } catch (IOException | RuntimeException e) {
            throw TemplateFault.in(name, Message.said("template.unreadable-picture", e), e);
        }
    }

    private static BufferedImage decoded(String name, byte[] bytes) throws ReportException, IOException {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReadersBySuffix(name.substring(name.lastIndexOf('.') + 1));
            ImageReader reader = readers.next();
            reader.setInput(in, true, true);
            try {
                if (reader.getWidth(0) > MOST_PIXELS || reader.getHeight(0) > MOST_PIXELS) {
                    throw TemplateFault.in(name, Message.said("template.pixels", MOST_PIXELS), null);
                }
                return reader.read(0);
            } finally {
                reader.dispose();
            }
        }
    }
}
