package slopewright.report.internal.pdf;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.sheet.Sheet;

/**
 * Writes sheets as the pages of one document, each in the size of its paper with a bookmark. Lines and areas are painted; letters are
 * written as text of the embedded face, so that they can be searched, copied and read aloud.
 */
public final class SheetDocument {

    private static final float POINTS_PER_MM = (float) (72 / 25.4);
    private static final String UNKNOWN = "?";

    private final PDDocument document;
    private final PDFont face;
    private final Fonts outlines = new Fonts();

    private SheetDocument(PDDocument document) throws IOException {
        this.document = document;
        face = Fonts.regular(document);
    }

    /**
     * Writes a document.
     *
     * @param sheets its pages
     * @param title  its title
     * @return the file; the same sheets give the same bytes
     * @throws IOException where it cannot be written
     */
    public static byte[] write(List<Sheet> sheets, String title) throws IOException {
        try (PDDocument document = new PDDocument()) {
            SheetDocument writer = new SheetDocument(document);
            PDDocumentOutline outline = new PDDocumentOutline();
            CRC32 sum = new CRC32();
            for (Sheet sheet : sheets) {
                PDOutlineItem mark = new PDOutlineItem();
                mark.setTitle(sheet.title());
                mark.setDestination(writer.page(sheet));
                outline.addLast(mark);
                sum.update((sheet.title() + sheet.below()).getBytes(StandardCharsets.UTF_8));
            }
            document.getDocumentCatalog().setDocumentOutline(outline);
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(title);
            information.setProducer("Slopewright");
            document.setDocumentInformation(information);
            document.setDocumentId(sum.getValue());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private PDPage page(Sheet sheet) throws IOException {
        ScenePainter painter = new ScenePainter(sheet, outlines).withoutLetters();
        float width = (float) painter.widthMm() * POINTS_PER_MM;
        float height = (float) painter.heightMm() * POINTS_PER_MM;
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
        graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
        painter.paint(graphics);
        graphics.dispose();
        ScenePoint from = sheet.frame().get(0);
        ScenePoint to = sheet.frame().get(1);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(graphics.getXFormObject());
            content.saveGraphicsState();
            content.addRect((float) from.x() * POINTS_PER_MM, height - (float) to.y() * POINTS_PER_MM,
                    (float) (to.x() - from.x()) * POINTS_PER_MM, (float) (to.y() - from.y()) * POINTS_PER_MM);
            content.clip();
            letters(content, painter, sheet.inside(), height);
            content.restoreGraphicsState();
            letters(content, painter, sheet.below(), height);
        }
        return page;
    }

    private void letters(PDPageContentStream content, ScenePainter painter, List<Mark> marks, float height) throws IOException {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Label label && !label.text().isEmpty()) {
                Color colour = ScenePainter.colour(label.ink());
                content.beginText();
                content.setNonStrokingColor(colour);
                content.setFont(face, (float) ScenePainter.size(label) * POINTS_PER_MM);
                content.newLineAtOffset((float) painter.left(label) * POINTS_PER_MM, height - (float) label.at().y() * POINTS_PER_MM);
                content.showText(known(label.text()));
                content.endText();
            }
        }
    }

    /** Writes a question mark where the face has no letter, so that nothing vanishes without a sign. */
    private String known(String text) throws IOException {
        StringBuilder known = new StringBuilder();
        for (int letter : text.codePoints().toArray()) {
            String one = Character.toString(letter);
            boolean there;
            try {
                face.encode(one);
                there = true;
            } catch (IllegalArgumentException e) {
                there = false;
            }
            known.append(there ? one : UNKNOWN);
        }
        return known.toString();
    }
}
