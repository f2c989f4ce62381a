package slopewright.ui.profile.internal.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.FlownApproach;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.Viewpoint;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** The pilot's view of an indicator: what is chosen on the left, the picture in the middle, the words on the right. */
public final class PilotPage {

    private static final int WORDS_WIDTH = 236;
    private static final int LEAST_PICTURE_WIDTH = 330;
    private static final double MOVE_S = 0.1;

    private final Composite page;
    private final PilotControls controls;
    private final PlayBar bar;
    private final Label problem;
    private final PilotCanvas canvas;
    private final Composite side;
    private final Label meaning;
    private final Text text;
    private final Runnable moving;
    private Optional<ProjectDocument> document = Optional.empty();
    private Optional<Indicator> indicator = Optional.empty();
    private Optional<Sight> sight = Optional.empty();
    private Optional<String> flownAidId = Optional.empty();
    private Playback playback = new Playback(new FlownApproach(1, 1, 1, 0, 0, 1, 0));
    private List<Playback.Sample> samples = List.of();
    private Daylight daylight = Daylight.DUSK;
    private double unmovedS;

    private final class Choices implements PilotControls.Target {

        @Override
        public void choose(ApproachAid aid) {
            document.ifPresent(open -> open.viewState().choose(aid.getId()));
        }

        @Override
        public void daylight(Daylight light) {
            daylight = light;
            show();
        }

        @Override
        public void look(FramePoint eye) {
            playback.play(false);
            place(eye);
        }

        @Override
        public void onSlope() {
            indicator.ifPresent(sited -> look(sited.onSlope(Math.max(0, 0 - eye().alongM()))));
        }

        @Override
        public void fly(FlownApproach approach) {
            playback.approach(approach);
            sample();
            seek(playback.timeS());
        }

        @Override
        public void problem(Optional<String> words) {
            say(words);
        }
    }

    private final class Keys implements PilotKeys.Target {

        @Override
        public void move(double alongM, double rightM, double upM) {
            playback.play(false);
            place(PilotKeys.moved(eye(), alongM, rightM, upM));
        }

        @Override
        public void play() {
            togglePlay();
        }

        @Override
        public void onSlope() {
            new Choices().onSlope();
        }
    }

    /**
     * Makes the page.
     *
     * @param parent where it stands
     * @param moving is run when something may have begun to move
     */
    public PilotPage(Composite parent, Runnable moving) {
        this.moving = moving;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(2, 0).applyTo(page);
        controls = new PilotControls(page, new Choices());
        GridDataFactory.fillDefaults().hint(controls.width(), 10).grab(false, true).applyTo(controls.control());
        Composite middle = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(middle);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(middle);
        bar = new PlayBar(middle, new PlayBar.Target(this::togglePlay, seconds -> {
            playback.play(false);
            seek(playback.timeS() + seconds);
        }, share -> seek(share * playback.approach().durationS()), factor -> playback.factor(factor), this::hold));
        problem = new Label(middle, SWT.WRAP);
        canvas = new PilotCanvas(middle, share -> seek(share * playback.approach().durationS()));
        GridDataFactory.fillDefaults().grab(true, true).hint(10, 10).applyTo(canvas.control());
        side = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 3).applyTo(side);
        GridDataFactory.fillDefaults().hint(TypeScale.px(WORDS_WIDTH), 10).grab(false, true).applyTo(side);
        meaning = new Label(side, SWT.WRAP);
        meaning.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(meaning);
        text = Named.name(new Text(side, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL), Messages.get("pilot.words"));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(text);
        PilotKeys.listen(canvas.control(), new Keys());
        page.addListener(SWT.Resize, event -> makeRoom());
        say(Optional.empty());
    }

    private void makeRoom() {
        boolean fits = page.getClientArea().width >= controls.width() + TypeScale.px(LEAST_PICTURE_WIDTH + WORDS_WIDTH);
        if (side.getVisible() != fits) {
            side.setVisible(fits);
            GridDataFactory.fillDefaults().hint(TypeScale.px(WORDS_WIDTH), 10).grab(false, true).exclude(!fits).applyTo(side);
            page.layout(true);
        }
    }

    private void say(Optional<String> words) {
        problem.setText(words.orElse(""));
        problem.setVisible(words.isPresent());
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 0).exclude(words.isEmpty()).applyTo(problem);
        problem.getParent().layout(true);
    }

    /**
     * Shows the chosen aid of a document as it is now.
     *
     * @param newDocument the document
     * @return why the aid cannot be shown, empty where it can or there is none
     */
    public Optional<String> follow(Optional<ProjectDocument> newDocument) {
        document = newDocument;
        indicator = Optional.empty();
        Optional<ApproachAid> aid = document.flatMap(open -> open.viewState().aid());
        if (aid.isEmpty()) {
            sight = Optional.empty();
            return Optional.empty();
        }
        try {
            indicator = Optional.of(Indicator.of(document.orElseThrow().evaluation(aid.get()).orThrow()));
        } catch (SitingException e) {
            sight = Optional.empty();
            return Optional.of(Messages.get("pilot.empty.reason", MessageTexts.label(aid.get()), MessageTexts.of(e.reason())));
        }
        prepare(aid.get());
        show();
        return Optional.empty();
    }

    private void prepare(ApproachAid aid) {
        if (!flownAidId.equals(Optional.ofNullable(aid.getId()))) {
            flownAidId = Optional.ofNullable(aid.getId());
            Playback fresh = new Playback(indicator.orElseThrow().usualApproach());
            fresh.factor(playback.factor());
            fresh.hold(playback.isHeld());
            playback = fresh;
        }
        sample();
    }

    private void sample() {
        samples = indicator.map(playback::samples).orElse(List.of());
    }

    private FramePoint eye() {
        String hostId = indicator.map(sited -> sited.host().getId()).orElse("");
        return document.flatMap(open -> open.viewState().viewpoint()).filter(viewpoint -> hostId.equals(viewpoint.hostId()))
                .map(Viewpoint::eye)
                .orElseGet(() -> indicator.orElseThrow().usualEye());
    }

    private void place(FramePoint eye) {
        indicator.ifPresent(sited -> document.ifPresent(open -> open.viewState().look(new Viewpoint(sited.host().getId(), eye))));
    }

    /** Looks at the same indicator from where the eye is now. */
    public void look() {
        show();
    }

    private void show() {
        if (indicator.isEmpty()) {
            return;
        }
        Sight now = Sight.of(indicator.get(), eye(), daylight);
        sight = Optional.of(now);
        controls.update(Projects.aids(document.orElseThrow().project()), indicator.get().aid(), daylight);
        controls.update(now.eye(), playback.approach());
        bar.update(playback);
        Words words = new Words(now);
        String told = words.meaning();
        if (!told.equals(meaning.getText())) {
            meaning.setText(told);
            side.layout(true);
        }
        String lines = String.join(Text.DELIMITER, words.lines());
        if (!lines.equals(text.getText())) {
            int top = text.getTopIndex();
            text.setText(lines);
            text.setTopIndex(top);
        }
        canvas.show(now, playback, samples, told);
        moving.run();
    }

    private void togglePlay() {
        playback.play(!playback.isPlaying());
        if (playback.isPlaying()) {
            indicator.ifPresent(sited -> place(playback.eye(sited)));
        }
        bar.update(playback);
        moving.run();
    }

    private void seek(double seconds) {
        playback.seek(seconds);
        indicator.ifPresent(sited -> place(playback.eye(sited)));
        show();
    }

    private void hold(boolean on) {
        playback.hold(on);
        show();
    }

    /** Returns whether something moves or blinks. */
    public boolean isMoving() {
        return sight.isPresent() && (playback.isPlaying() || !playback.isHeld() && sight.get().isTimed());
    }

    /** Lets time go on by some seconds. */
    public void advance(double seconds) {
        if (sight.isEmpty()) {
            return;
        }
        boolean blinked = playback.blink(seconds, sight.get());
        unmovedS += seconds;
        if (playback.isPlaying() && unmovedS >= MOVE_S) {
            if (playback.fly(unmovedS)) {
                place(playback.eye(indicator.orElseThrow()));
            }
            unmovedS = 0;
            bar.update(playback);
        } else if (blinked) {
            canvas.redrawPictures();
        }
        if (!playback.isPlaying()) {
            unmovedS = 0;
        }
    }

    /** Returns whether there is an indicator to look at. */
    public boolean isShowing() {
        return sight.isPresent();
    }

    /** Returns whether this is the aid that is looked at. */
    public boolean isShowing(Optional<ApproachAid> aid) {
        return isShowing() && aid.equals(indicator.map(Indicator::aid));
    }

    /** Returns what is seen, empty where there is no indicator. */
    public Optional<Sight> sight() {
        return sight;
    }

    /** Returns the time of the view. */
    public Playback playback() {
        return playback;
    }

    /** Returns its control. */
    public Composite control() {
        return page;
    }

    /** Returns the picture. */
    public PilotCanvas canvas() {
        return canvas;
    }

    /** Returns what is chosen and typed. */
    public PilotControls controls() {
        return controls;
    }

    /** Returns the controls of the approach that is flown. */
    public PlayBar bar() {
        return bar;
    }

    /** Returns what is said about something typed that cannot be taken, empty where all can. */
    public String problem() {
        return problem.getText();
    }

    /** Returns the words beside the picture, the meaning first. */
    public List<String> words() {
        List<String> all = new ArrayList<>(List.of(meaning.getText()));
        all.addAll(List.of(text.getText().split(Text.DELIMITER)));
        return all;
    }

    /** Returns the control that has the words. */
    public Control text() {
        return text;
    }
}
