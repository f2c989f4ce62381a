package slopewright.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

import javax.imageio.ImageIO;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import slopewright.drawing.DxfPainter;
import slopewright.drawing.Scene;
import slopewright.drawing.Sheet;
import slopewright.drawing.SvgPainter;
import slopewright.drawing.TitleBlock;
import slopewright.report.internal.ScenePainter;

/** Writes one drawing in the form that people ask for. */
public final class Drawings {

    private static final double WIDTH_MM = 277;
    private static final double HEIGHT_MM = 190;
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double PIXELS_PER_MM = 8;

    private Drawings() {
    }

    /** The form of a drawing. */
    public enum Format {
        /** Scalable Vector Graphics. */
        SVG,
        /** Drawing exchange format, metres. */
        DXF,
        /** Portable Document Format, one page. */
        PDF,
        /** Portable Network Graphics, 8 pixels a millimetre. */
        PNG
    }

    /**
     * Writes a drawing.
     *
     * @param scene  the scene
     * @param format the form
     * @return the file; the same scene gives the same bytes
     * @throws ReportException where it can not be painted
     */
    public static byte[] write(Scene scene, Format format) throws ReportException {
        return write(scene, TitleBlock.none(), format);
    }

    /**
     * Writes a drawing with a title block; a drawing exchange file carries none.
     *
     * @param scene  the scene
     * @param block  the title block
     * @param format the form
     * @return the file; the same scene and block give the same bytes
     * @throws ReportException where it can not be painted
     */
    public static byte[] write(Scene scene, TitleBlock block, Format format) throws ReportException {
        Sheet sheet = Sheet.of(scene, block, WIDTH_MM, HEIGHT_MM);
        try {
            return switch (format) {
                case SVG -> SvgPainter.paint(sheet).getBytes(StandardCharsets.UTF_8);
                case DXF -> DxfPainter.paint(scene, WIDTH_MM).getBytes(StandardCharsets.US_ASCII);
                case PDF -> pdf(sheet);
                case PNG -> png(sheet);
            };
        } catch (IOException e) {
            throw new ReportException("the drawing can not be painted: " + e.getMessage(), e);
        }
    }

    private static byte[] pdf(Sheet sheet) throws IOException {
        ScenePainter painter = new ScenePainter(sheet);
        float width = (float) (WIDTH_MM * POINTS_PER_MM);
        float height = (float) (painter.heightMm() * POINTS_PER_MM);
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(width, height));
            document.addPage(page);
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
            graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
            painter.paint(graphics);
            graphics.dispose();
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(graphics.getXFormObject());
            }
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(sheet.title());
            information.setProducer("Slopewright");
            document.setDocumentInformation(information);
            document.setDocumentId(Long.valueOf(sheet.title().hashCode()));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static byte[] png(Sheet sheet) throws IOException {
        ScenePainter painter = new ScenePainter(sheet);
        BufferedImage image = new BufferedImage((int) (WIDTH_MM * PIXELS_PER_MM), (int) Math.ceil(painter.heightMm() * PIXELS_PER_MM),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
        painter.paint(graphics);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("there is no writer of PNG files");
        }
        return out.toByteArray();
    }
}
