package slopewright.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

import slopewright.checks.CheckResult;
import slopewright.checks.Standing;
import slopewright.drawing.View;
import slopewright.drawing.circuit.CircuitScene;
import slopewright.drawing.paint.DxfLevel;
import slopewright.drawing.paint.DxfPainter;
import slopewright.drawing.paint.DxfUnit;
import slopewright.drawing.paint.SvgPainter;
import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.plan.GridPlacement;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.sheet.DrawingRegister;
import slopewright.drawing.sheet.Sheet;
import slopewright.drawing.sheet.SheetFormat;
import slopewright.drawing.sheet.TitleBlock;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.Circuit;
import slopewright.report.internal.pdf.CoordinateScene;
import slopewright.report.internal.pdf.PngFile;
import slopewright.report.internal.pdf.ScenePainter;
import slopewright.report.internal.pdf.SheetDocument;

/** Writes one drawing in the form that people ask for. */
public final class Drawings {

    private static final double WIDTH_MM = 277;
    private static final double HEIGHT_MM = 190;
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
     * @throws ReportException where it cannot be painted
     */
    public static byte[] write(Scene scene, Format format) throws ReportException {
        return write(scene, TitleBlock.none(MessageRenderer.of(Locale.ENGLISH)), format);
    }

    /**
     * Writes a drawing with a title block; a drawing exchange file carries none.
     *
     * @param scene  the scene
     * @param block  the title block
     * @param format the form
     * @return the file; the same scene and block give the same bytes
     * @throws ReportException where it cannot be painted
     */
    public static byte[] write(Scene scene, TitleBlock block, Format format) throws ReportException {
        return write(Sheet.of(scene, block, WIDTH_MM, HEIGHT_MM), () -> DxfPainter.paint(scene, WIDTH_MM), format);
    }

    /**
     * What one drawing shows.
     *
     * @param drawn    the aid
     * @param view     the view
     * @param eye      the pilot's eye in the frame; only the pilot's view looks at it
     * @param daylight how light it is in the pilot's view
     */
    public record Subject(DrawnAid drawn, View view, FramePoint eye, Daylight daylight) {
    }

    /**
     * How a drawing is laid out on paper.
     *
     * @param paper    the paper
     * @param scale    the number N of a scale 1:N; zero chooses the largest usual one that fits
     * @param made     what it is made from
     * @param date     the date to print
     * @param language the language of the title block
     * @param checked  the check whose verdict every sheet carries; empty where nobody checked, which the sheets say
     */
    public record Layout(SheetFormat paper, int scale, MadeFrom made, String date, Locale language, Optional<Checked> checked) {
    }

    /**
     * A check of the project that is drawn.
     *
     * @param project the project, evaluated
     * @param result  what the rules say of that evaluation
     */
    public record Checked(ProjectEvaluation project, CheckResult result) {

        /** Tells how what a view shows stands: the aid, and where it shows a circuit everything that this feeds. */
        Standing of(DrawnAid drawn, View view) {
            Optional<Circuit> circuit = view == View.CIRCUIT ? CircuitScene.feeding(drawn.aid()) : Optional.empty();
            return Standing.of(circuit.map(found -> found.getAids().stream().map(project::aid).toList())
                    .orElse(List.of(drawn.evaluation())), result);
        }
    }

    /**
     * Writes a drawing on drawing paper with border, key and title block. A drawing exchange file holds plans on the grid of the
     * aerodrome, in metres.
     *
     * @param subject what it shows
     * @param layout  how it is laid out
     * @param format  the form
     * @return the file; the same input gives the same bytes
     * @throws IllegalArgumentException where the scale does not do or the aid has nothing that the view shows; the message says so
     * @throws ReportException          where it cannot be painted
     */
    public static byte[] write(Subject subject, Layout layout, Format format) throws ReportException {
        Sheet sheet = sheet(subject, layout, format, "");
        boolean placed = format == Format.DXF && subject.view().isPlan();
        return write(sheet, () -> DxfPainter.paint(sheet, placed ? GridPlacement.of(subject.drawn()) : GridPlacement.none(),
                placed ? DxfUnit.of(subject.drawn()) : List.of(), placed ? DxfLevel.of(subject.drawn()) : List.of()), format);
    }

    /**
     * Writes drawings as one document: the register of all sheets first, then each sheet with its number, after those of an aid the
     * coordinates to set it out from.
     *
     * @param subjects what each sheet shows
     * @param layout   how they are laid out
     * @return the document, Portable Document Format; the same input gives the same bytes
     * @throws IllegalArgumentException where the scale does not do or an aid has nothing that its view shows; the message says so
     * @throws ReportException          where it cannot be painted
     */
    public static byte[] set(List<Subject> subjects, Layout layout) throws ReportException {
        if (subjects.isEmpty()) {
            throw new ReportException(Message.of("document.nothing"));
        }
        MessageRenderer words = subjects.get(0).drawn().language();
        int drawings = subjects.size() + (int) subjects.stream().map(Subject::drawn).distinct().count();
        int first = DrawingRegister.sheets(drawings, layout.paper()) + 1;
        int count = first - 1 + drawings;
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < subjects.size(); i++) {
            DrawnAid drawn = subjects.get(i).drawn();
            sheets.add(sheet(subjects.get(i), layout, Format.PDF, number(words, layout, sheets.size() + first, count)));
            if (i + 1 == subjects.size() || subjects.get(i + 1).drawn() != drawn) {
                Scene scene = CoordinateScene.of(drawn, layout.paper().area(0));
                TitleBlock block = block(drawn, scene.title(), View.PLAN, layout);
                sheets.add(Sheet.onPaper(scene, block.with(TitleBlock.Field.SHEET, number(words, layout, sheets.size() + first, count)),
                        layout.paper()));
            }
        }
        String title = words.render(Message.of("drawing.set"));
        TitleBlock block = verdict(block(subjects.get(0).drawn(), title, layout), layout.checked()
                .map(checked -> Standing.of(checked.result())));
        List<Sheet> all = new ArrayList<>(DrawingRegister.of(sheets, title, page -> block.with(TitleBlock.Field.SHEET, number(words, layout,
                page, count)), layout.paper()));
        all.addAll(sheets);
        try {
            return SheetDocument.write(all, title);
        } catch (IOException e) {
            throw new ReportException(Message.said("document.drawings", e), e);
        }
    }

    private static String number(MessageRenderer words, Layout layout, int sheet, int sheets) {
        return words.render(Message.of("drawing.sheet-of", Words.name(layout.paper().key()), Words.count(sheet), Words.count(sheets)));
    }

    private static TitleBlock block(DrawnAid drawn, String title, Layout layout) {
        return TitleBlock.of(drawn.project(), title, layout.made().under(drawn.evaluation().rules()), layout.date(), drawn.language())
                .with(TitleBlock.Field.DATUM, TitleBlock.datum(drawn))
                .with(TitleBlock.Field.CAUTION, Cautions.in(layout.language()).get(0));
    }

    private static TitleBlock block(DrawnAid drawn, String title, View view, Layout layout) {
        return verdict(block(drawn, title, layout), layout.checked().map(checked -> checked.of(drawn, view)));
    }

    private static TitleBlock verdict(TitleBlock block, Optional<Standing> standing) {
        return standing.map(found -> block.with(TitleBlock.Field.VERDICT, block.language().render(found.words()))).orElse(block);
    }

    private static Sheet sheet(Subject subject, Layout layout, Format format, String number) {
        DrawnAid drawn = subject.drawn();
        Scene scene = subject.view().scene(drawn, layout.paper().area(layout.scale()), subject.eye(), subject.daylight());
        boolean placed = format == Format.DXF && subject.view().isPlan();
        Scene told = placed ? scene.with(GridPlacement.words(drawn)) : scene;
        TitleBlock block = block(drawn, scene.title(), subject.view(), layout);
        return Sheet.onPaper(told, number.isEmpty() ? block : block.with(TitleBlock.Field.SHEET, number), layout.paper());
    }

    private static byte[] write(Sheet sheet, Supplier<String> exchange, Format format) throws ReportException {
        try {
            return switch (format) {
                case SVG -> SvgPainter.paint(sheet).getBytes(StandardCharsets.UTF_8);
                case DXF -> exchange.get().getBytes(StandardCharsets.UTF_8);
                case PDF -> SheetDocument.write(List.of(sheet), sheet.title());
                case PNG -> png(sheet);
            };
        } catch (IOException e) {
            throw new ReportException(Message.said("document.drawing", e), e);
        }
    }

    private static byte[] png(Sheet sheet) throws IOException {
        ScenePainter painter = new ScenePainter(sheet);
        int width = (int) (painter.widthMm() * PIXELS_PER_MM);
        int height = (int) Math.ceil(painter.heightMm() * PIXELS_PER_MM);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
        painter.paint(graphics);
        graphics.dispose();
        return PngFile.bytes(image, sheet.block().contents().getOrDefault(TitleBlock.Field.MADE_FROM, ""));
    }
}
