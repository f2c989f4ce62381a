package slopewright.report.internal.pdf;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;

/**
 * The face that documents are set in: Liberation Sans, which comes with the product, so that a document looks the same on every machine
 * and none needs fonts of its own. Its licence lies beside it.
 */
final class Fonts {

    /** Name of the family in style sheets. */
    static final String FAMILY = "Liberation Sans";

    /** A style of a user may name none of ours; what documents fall back to is ours as well. */
    private static final List<String> FAMILIES = List.of(FAMILY, "serif", "sans-serif", "monospace");
    private static final String REGULAR = "fonts/LiberationSans-Regular.ttf";
    private static final String BOLD = "fonts/LiberationSans-Bold.ttf";
    private static final int NORMAL_WEIGHT = 400;
    private static final int BOLD_WEIGHT = 700;

    private final Map<Integer, Glyph> glyphs = new HashMap<>();
    private final TrueTypeFont face;
    private final CmapLookup letters;
    private final double unitsPerEm;

    /** The outline of one letter and how far the next stands from it, font units. */
    private record Glyph(Shape outline, double advance) {
    }

    /** Reads the regular face, for letters that are painted as outlines. Not for use by several threads at once. */
    Fonts() {
        try (InputStream in = open(REGULAR); RandomAccessReadBuffer bytes = new RandomAccessReadBuffer(in)) {
            face = new TTFParser().parse(bytes);
            letters = face.getUnicodeCmapLookup();
            unitsPerEm = face.getUnitsPerEm();
        } catch (IOException e) {
            throw new IllegalStateException("the face of documents cannot be read", e);
        }
    }

    private static InputStream open(String name) {
        return Fonts.class.getResourceAsStream(name);
    }

    /**
     * Makes both faces known to a layout.
     *
     * @param builder  the layout
     * @param document the document that it writes into, which closes the faces with itself
     * @throws IOException where a face cannot be read
     */
    static void register(PdfRendererBuilder builder, PDDocument document) throws IOException {
        PDFont regular = embedded(REGULAR, document);
        PDFont bold = embedded(BOLD, document);
        for (String family : FAMILIES) {
            builder.useFont(new PDFontSupplier(regular), family, NORMAL_WEIGHT, FontStyle.NORMAL, true);
            builder.useFont(new PDFontSupplier(bold), family, BOLD_WEIGHT, FontStyle.NORMAL, true);
        }
    }

    /** Embeds the regular face in a document, which closes it with itself. */
    static PDFont regular(PDDocument document) throws IOException {
        return embedded(REGULAR, document);
    }

    /** Embeds a face without ligatures, whose search would take most of the time of a layout. */
    private static PDFont embedded(String name, PDDocument document) throws IOException {
        try (InputStream in = open(name); RandomAccessReadBuffer bytes = new RandomAccessReadBuffer(in)) {
            TrueTypeFont font = new TTFParser().parse(bytes);
            font.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(font);
            return PDType0Font.load(document, font, true);
        }
    }

    /** Returns the width of a line of text in the unit of the size of its type. */
    double width(String text, double size) {
        return text.codePoints().mapToDouble(letter -> glyph(letter).advance()).sum() * size / unitsPerEm;
    }

    /** Returns the outline of a line of text whose foot begins at a place, y down. */
    Shape outline(String text, double size, double x, double y) {
        double scale = size / unitsPerEm;
        Path2D whole = new Path2D.Double();
        double[] pen = {x};
        text.codePoints().forEach(letter -> {
            Glyph glyph = glyph(letter);
            whole.append(new AffineTransform(scale, 0, 0, -scale, pen[0], y).createTransformedShape(glyph.outline()), false);
            pen[0] += glyph.advance() * scale;
        });
        return whole;
    }

    private Glyph glyph(int letter) {
        return glyphs.computeIfAbsent(letter, this::read);
    }

    private Glyph read(int letter) {
        try {
            int id = letters.getGlyphId(letter);
            GlyphData data = face.getGlyph().getGlyph(id);
            return new Glyph(data == null ? new Path2D.Double() : data.getPath(), face.getAdvanceWidth(id));
        } catch (IOException e) {
            throw new IllegalStateException("a letter of the face of documents cannot be read", e);
        }
    }
}
