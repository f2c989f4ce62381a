package slopewright.ui.profile.internal.directions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.drawing.landing.DirectionScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.landing.LandingCell;
import slopewright.evaluation.landing.LandingDirection;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.LandingSpeed;
import slopewright.evaluation.landing.LandingWind;
import slopewright.evaluation.landing.SettableSlopes;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.ui.MessageTexts;
import slopewright.ui.profile.internal.Messages;

/** The chart of the landing directions of an aid with what is read in it, and a button that takes the direction that was chosen. */
public final class DirectionsPage {
    private static final double STEP_DEG = 0.5;
    private static final double STEP_ON_GROUND_DEG = 1;
    private static final int SIDE_WIDTH = 250;
    private static final Pattern WIND = Pattern.compile("\\s*(\\d{1,3})\\s*[/ ]\\s*(\\d{1,3})\\s*");

    private final Composite page;
    private final DirectionsCanvas canvas;
    private final Text wind;
    private final Label head;
    private final Text words;
    private final Button take;
    private final Consumer<DirectionScene.Chosen> taken;
    private Optional<AidEvaluation> evaluation = Optional.empty();
    private Optional<LandingDirections> found = Optional.empty();
    private Optional<DirectionScene.Chosen> chosen = Optional.empty();

    /**
     * Makes the page.
     *
     * @param parent where it stands
     * @param taken  is told the direction and slope that the user takes
     */
    public DirectionsPage(Composite parent, Consumer<DirectionScene.Chosen> taken) {
        this.taken = taken;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(page);
        canvas = new DirectionsCanvas(page, this::read, this::choose);
        GridDataFactory.fillDefaults().grab(true, true).hint(10, 10).applyTo(canvas.control());
        Composite side = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 4).spacing(4, 4).applyTo(side);
        GridDataFactory.fillDefaults().hint(SIDE_WIDTH, 10).grab(false, true).applyTo(side);
        new Label(side, SWT.NONE).setText(Messages.get("directions.wind"));
        wind = new Text(side, SWT.BORDER);
        wind.setMessage("240/15");
        wind.setToolTipText(Messages.get("directions.wind.tip"));
        wind.addListener(SWT.Modify, event -> show());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(wind);
        head = new Label(side, SWT.WRAP);
        head.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(head);
        words = new Text(side, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(10, 10).applyTo(words);
        take = new Button(side, SWT.PUSH);
        take.setText(Messages.get("directions.take"));
        take.addListener(SWT.Selection, event -> chosen.ifPresent(this.taken));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(take);
    }

    /** Returns its control. */
    public Composite control() {
        return page;
    }

    /** Returns the chart. */
    public Composite chart() {
        return canvas.control();
    }

    /**
     * Looks all round, in steps that are worth their time.
     *
     * @param aid the evaluation of an aid at a helipad
     * @return what is found
     * @throws slopewright.siting.SitingException where nothing can be found; the message says why
     */
    public static LandingDirections search(AidEvaluation aid) {
        return LandingDirections.of(aid, SettableSlopes.of(aid, hasGround(aid) ? STEP_ON_GROUND_DEG : STEP_DEG));
    }

    /** Turns to an aid at a helipad, whose directions are still looked for; those of the same aid as it was stay until then. */
    public void look(AidEvaluation aid) {
        boolean same = evaluation.filter(shown -> shown.aid() == aid.aid()).isPresent();
        evaluation = Optional.of(aid);
        if (!same) {
            found = Optional.empty();
            chosen = Optional.empty();
            canvas.clear();
            words.setText("");
        }
        head.setText(Messages.get("directions.looking"));
        take.setEnabled(false);
    }

    /** Shows the directions that were looked for. */
    public void show(LandingDirections all) {
        found = Optional.of(all);
        head.setText("");
        if (chosen.isEmpty()) {
            chosen = own();
        }
        show();
    }

    private static boolean hasGround(AidEvaluation aid) {
        Aerodrome aerodrome = aid.project().getAerodrome();
        return aerodrome != null && !aerodrome.getGroundLevels().isEmpty();
    }

    private Optional<DirectionScene.Chosen> own() {
        return evaluation.flatMap(aid -> aid.frame().value().flatMap(frame -> aid.siting().value()
                .map(siting -> new DirectionScene.Chosen(frame.bearingDeg(), siting.slopeDeg()))));
    }

    private Optional<LandingWind> blowing() {
        Matcher read = WIND.matcher(wind.getText());
        return read.matches() && Integer.parseInt(read.group(1)) <= 360
                ? Optional.of(new LandingWind(Integer.parseInt(read.group(1)), Integer.parseInt(read.group(2)))) : Optional.empty();
    }

    private static MessageRenderer renderer() {
        return MessageTexts.renderer();
    }

    private void show() {
        if (found.isEmpty()) {
            return;
        }
        String title = evaluation.map(aid -> MessageTexts.path(aid.aid())).orElse("");
        canvas.show(found.get(), new DirectionScene.Told(title, renderer(), own(), blowing(), OptionalDouble.empty()));
        canvas.mark(chosen);
        chosen.ifPresent(this::read);
        take.setEnabled(chosen.isPresent());
    }

    private void choose(DirectionScene.Chosen at) {
        double step = found.orElseThrow().slopes().stepDeg();
        chosen = Optional.of(new DirectionScene.Chosen(Math.floorMod(Math.round(at.trueDeg()), LandingDirections.COUNT),
                Math.max(found.get().slopes().fromDeg(), Math.round(at.slopeDeg() / step) * step)));
        canvas.mark(chosen);
        chosen.ifPresent(this::read);
        take.setEnabled(true);
    }

    /** Tells what is known of a direction and slope. */
    private void read(DirectionScene.Chosen at) {
        LandingDirection direction = found.orElseThrow().at(at.trueDeg());
        Optional<LandingCell> cell = direction.at(Math.max(found.get().slopes().fromDeg(), at.slopeDeg()));
        if (cell.isEmpty()) {
            return;
        }
        head.setText(Messages.get("directions.state." + cell.get().state().key(),
                renderer().write(Words.quantity(direction.trueDeg(), Notation.BEARING)),
                renderer().write(Words.degrees(cell.get().slopeDeg()))));
        words.setText(String.join("\n", lines(direction, cell.get())));
        head.getParent().layout(true);
    }

    /** Returns what is read now, the head first. */
    public List<String> read() {
        return List.of(head.getText(), words.getText());
    }

    private List<String> lines(LandingDirection direction, LandingCell cell) {
        List<String> lines = new ArrayList<>();
        direction.clearFromDeg().ifPresentOrElse(from -> lines.add(direction.clearToDeg().isEmpty()
                ? Messages.get("directions.clear-from", renderer().write(Words.degrees(from)))
                : Messages.get("directions.clear-between", renderer().write(Words.degrees(from)),
                        renderer().write(Words.degrees(direction.clearToDeg().getAsDouble())))),
                () -> lines.add(Messages.get("directions.clear-never")));
        cell.governing().ifPresent(standing -> lines.add(Messages.get("directions.governing", standing.label(),
                renderer().write(Words.margin(standing.marginM())), renderer().render(cell.line().orElseThrow().message()))));
        cell.reason().map(Message.class::cast).ifPresent(reason -> lines.add(renderer().render(reason)));
        Optional<LandingWind> wind = blowing();
        wind.ifPresent(air -> lines.add(Messages.get("directions.components", knots(air.headwindKt(direction.trueDeg())),
                knots(air.crosswindKt(direction.trueDeg())))));
        evaluation.flatMap(aid -> LandingSpeed.of(aid.aid())).map(speed -> speed.descentFtMin(cell.slopeDeg(),
                wind.map(air -> air.headwindKt(direction.trueDeg())).orElse(0.0))).filter(OptionalDouble::isPresent)
                .ifPresent(rate -> lines.add(Messages.get("directions.descent", renderer().write(
                        Words.quantity(Math.round(rate.getAsDouble()), Notation.FEET_PER_MINUTE)))));
        return lines;
    }

    private static String knots(double kt) {
        return String.format(Locale.ROOT, "%+.0f kt", kt + 0.0);
    }
}
