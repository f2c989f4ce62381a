package slopewright.report.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.GregorianCalendar;
import java.util.TimeZone;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Lays an XHTML document out as PDF: the same bytes for the same document. */
public final class PdfDocument {

    private static final double PIXELS_PER_MM = 96 / 25.4;

    private PdfDocument() {
    }

    /** Lays out a document. */
    public static byte[] write(String xhtml, Pictures pictures, String title) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withHtmlContent(xhtml.replaceFirst("<!DOCTYPE html>\n", ""), "");
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        drawers.registerDrawer("drawing/scene", drawer(pictures));
        builder.useObjectDrawerFactory(drawers);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(title);
            information.setProducer("Slopewright");
            GregorianCalendar fixed = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
            fixed.setTimeInMillis(0);
            information.setCreationDate(fixed);
            document.setDocumentInformation(information);
            document.setDocumentId(Long.valueOf(xhtml.hashCode()));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static FSObjectDrawer drawer(Pictures pictures) {
        return (element, x, y, width, height, device, context, dotsPerPixel) -> {
            ScenePainter painter = new ScenePainter(pictures.scene(Integer.parseInt(element.getAttribute("data"))), Pictures.WIDTH_MM,
                    Pictures.HEIGHT_MM);
            device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, graphics -> {
                graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
                painter.paint(graphics);
            });
            return null;
        };
    }
}
