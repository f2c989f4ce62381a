package slopewright.report.internal.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import java.util.zip.CRC32;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;

/**
 * Lays an XHTML document out as a tagged PDF/A-2a and PDF/UA-1 document: the same bytes for the same document and date. It reads nothing
 * from outside the document.
 */
public final class PdfDocument {

    private static final double PIXELS_PER_MM = 96 / 25.4;
    /** How a picture begins that lies inside the document itself. */
    private static final String INSIDE = "data:image/png;base64,";
    private static final String PRODUCER = "Slopewright";
    private static final String FIRST = "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>First</title>"
            + "<style>body { font-family: 'Liberation Sans' } th { font-weight: bold }</style></head><body><h1>First</h1><table>"
            + "<thead><tr><th>1</th></tr></thead><tbody><tr><td>One</td></tr></tbody></table>"
            + "<p>Page <a href=\"#x\" id=\"x\">one</a></p></body></html>";

    private PdfDocument() {
    }

    /**
     * Lays out a document.
     *
     * @param xhtml    the document
     * @param pictures its drawings
     * @param title    its title
     * @param date     the day it bears, of the form 2026-01-31; the first day of 1970 where it has another form
     * @return the file
     * @throws IOException where it cannot be laid out
     */
    public static byte[] write(String xhtml, Pictures pictures, String title, String date) throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withHtmlContent(xhtml, "");
        builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A).usePdfUaAccessibility(true);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.withProducer(PRODUCER).useUnicodeLineBreaker(new WordBreaker());
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((uri, type) -> uri != null && uri.startsWith(INSIDE), when);
        }
        PDDocument document = new PDDocument();
        builder.usePDDocument(document);
        Fonts.register(builder, document);
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        drawers.registerDrawer("drawing/scene", drawer(pictures));
        builder.useObjectDrawerFactory(drawers);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            fix(document, title, day(date));
            CRC32 sum = new CRC32();
            sum.update(xhtml.getBytes(StandardCharsets.UTF_8));
            document.setDocumentId(sum.getValue());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    /**
     * Makes the layout engine and the faces of the letters ready by laying out a page that nobody gets, so that the first document is
     * written sooner. A fault is left to that document, which meets it too and tells it.
     */
    public static void prepare() {
        try {
            write(FIRST, new Pictures(false), PRODUCER, "");
        } catch (IOException | RuntimeException e) {
            XRLog.setLoggingEnabled(false);
        }
    }

    private static Calendar day(String date) {
        GregorianCalendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        try {
            day.setTimeInMillis(LocalDate.parse(date).atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        } catch (DateTimeParseException e) {
            day.setTimeInMillis(0);
        }
        return day;
    }

    /** Puts the given day in place of the time of writing, in the information and in the metadata that repeats it. */
    private static void fix(PDDocument document, String title, Calendar day) throws IOException {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setProducer(PRODUCER);
        information.setCreationDate(day);
        information.setModificationDate(day);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        if (metadata != null) {
            String stamp = String.format(Locale.ROOT, "%tFT%<tTZ", day);
            String text = new String(metadata.toByteArray(), StandardCharsets.UTF_8)
                    .replaceAll("(<xmp:(?:Create|Modify|Metadata)Date>)[^<]*", "$1" + stamp)
                    .replaceAll("(xmp:(?:Create|Modify|Metadata)Date=\")[^\"]*", "$1" + stamp);
            metadata.importXMPMetadata(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static FSObjectDrawer drawer(Pictures pictures) {
        return (element, x, y, width, height, device, context, dotsPerPixel) -> {
            ScenePainter painter = pictures.painter(Integer.parseInt(element.getAttribute("data")));
            device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, graphics -> {
                graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
                painter.paint(graphics);
            });
            return null;
        };
    }
}
