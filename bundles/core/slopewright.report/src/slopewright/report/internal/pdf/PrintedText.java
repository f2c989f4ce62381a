package slopewright.report.internal.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorN;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceCMYKColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceRGBColor;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads back what a person can read in a file: text inside the page, not too small, and darker than the paper. */
public final class PrintedText extends PDFTextStripper {

    private static final double SMALLEST_PT = 5.5;
    private static final double LIGHTEST = 0.75;

    private final StringBuilder readable = new StringBuilder();

    private PrintedText() {
        addOperator(new SetNonStrokingColorSpace(this));
        addOperator(new SetNonStrokingColor(this));
        addOperator(new SetNonStrokingColorN(this));
        addOperator(new SetNonStrokingDeviceGrayColor(this));
        addOperator(new SetNonStrokingDeviceRGBColor(this));
        addOperator(new SetNonStrokingDeviceCMYKColor(this));
    }

    /**
     * Finds a sentence that cannot be read in a file.
     *
     * @param pdf       the file
     * @param sentences what must be readable
     * @return the first sentence that cannot be read; empty where all can
     * @throws IOException where the file cannot be read at all
     */
    public static Optional<String> missing(byte[] pdf, List<String> sentences) throws IOException {
        PrintedText reader = new PrintedText();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            reader.getText(document);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        String all = squeezed(reader.readable.toString());
        return sentences.stream().filter(sentence -> !all.contains(squeezed(sentence))).findFirst();
    }

    /** Lines break where they will, so blanks do not count. */
    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0]+", "");
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        if (isReadable(text)) {
            super.processTextPosition(text);
        }
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
        readable.append(text);
    }

    private boolean isReadable(TextPosition text) {
        PDRectangle page = getCurrentPage().getCropBox();
        boolean inside = text.getX() >= 0 && text.getX() + text.getWidth() <= page.getWidth() && text.getY() >= 0
                && text.getY() <= page.getHeight();
        return inside && text.getFontSizeInPt() >= SMALLEST_PT && brightness() <= LIGHTEST;
    }

    private double brightness() {
        try {
            float[] colour = getGraphicsState().getNonStrokingColorSpace().toRGB(getGraphicsState().getNonStrokingColor().getComponents());
            return 0.2126 * colour[0] + 0.7152 * colour[1] + 0.0722 * colour[2];
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
