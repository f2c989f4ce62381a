package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import slopewright.drawing.pilot.Daylight;
import slopewright.drawing.pilot.FlownApproach;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.units.Quantity;

/** What is chosen and typed in the pilot's view: the indicator, how light it is, the eye, and the approach that is flown. */
public final class PilotControls {

    private static final double TENTH = 0.1;
    private static final double HUNDREDTH = 0.01;
    private static final Daylight[] LIGHTS = Daylight.values();

    /** What is told of choices. */
    public interface Target {

        /** Chooses an aid. */
        void choose(ApproachAid aid);

        /** Sets how light it is. */
        void daylight(Daylight light);

        /** Moves the eye. */
        void look(FramePoint eye);

        /** Moves the eye onto the slope, at its distance, over the centre line. */
        void onSlope();

        /** Flies another approach. */
        void fly(FlownApproach approach);

        /** Says what is wrong with what is typed, empty where nothing is. */
        void problem(Optional<String> words);
    }

    private final ScrolledComposite scroll;
    private final Composite body;
    private final Target target;
    private final Combo aids;
    private final Combo lights;
    private final List<NumberField> eyeFields;
    private final List<NumberField> approachFields;
    private List<ApproachAid> shownAids = List.of();
    private FramePoint eye = new FramePoint(0, 0, 0);
    private FlownApproach approach = new FlownApproach(1, 1, 1, 0, 0, 1, 0);

    /** Makes the controls. */
    public PilotControls(Composite parent, Target target) {
        this.target = target;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        body = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(6, 2).applyTo(body);
        aids = combo("pilot.aid");
        aids.addListener(SWT.Selection, event -> target.choose(shownAids.get(aids.getSelectionIndex())));
        lights = combo("pilot.daylight");
        lights.setItems(Stream.of(LIGHTS).map(daylight -> Messages.get("pilot.daylight." + daylight.name().toLowerCase(Locale.ROOT)))
                .toArray(String[]::new));
        lights.addListener(SWT.Selection, event -> target.daylight(LIGHTS[lights.getSelectionIndex()]));
        heading("pilot.eye");
        eyeFields = List.of(eye("pilot.eye.before", (old, value) -> new FramePoint(0 - value, old.rightM(), old.heightM())),
                eye("pilot.eye.right", (old, value) -> new FramePoint(old.alongM(), value, old.heightM())),
                eye("pilot.eye.height", FramePoint::atHeight));
        Button onSlope = new Button(body, SWT.PUSH);
        onSlope.setText(Messages.get("pilot.eye.on-slope"));
        onSlope.setToolTipText(Messages.get("pilot.eye.on-slope.tip"));
        onSlope.addListener(SWT.Selection, event -> target.onSlope());
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.END, SWT.CENTER).applyTo(onSlope);
        heading("pilot.approach");
        approachFields = makeApproachFields();
        scroll.setContent(body);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setMinSize(body.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        scroll.setShowFocusedControl(true);
    }

    private interface Moved {
        FramePoint move(FramePoint old, double value);
    }

    private interface Changed {
        FlownApproach change(FlownApproach old, double value);
    }

    private NumberField eye(String key, Moved moved) {
        return new NumberField(body, key, Quantity.LENGTH, TENTH, value -> {
            target.look(moved.move(eye, value));
            return Optional.empty();
        }, target::problem);
    }

    private NumberField flown(String key, Quantity quantity, double step, Changed changed) {
        return new NumberField(body, key, quantity, step, value -> {
            try {
                target.fly(changed.change(approach, value));
                return Optional.empty();
            } catch (IllegalArgumentException e) {
                return Optional.of(Messages.get("pilot.approach.refused", Messages.get(key)));
            }
        }, target::problem);
    }

    private List<NumberField> makeApproachFields() {
        return List.of(
                flown("pilot.approach.start", Quantity.LENGTH, TENTH, (old, value) -> new FlownApproach(value, old.groundSpeedKt(),
                        old.pathDeg(), old.offsetDeg(), old.weaveDeg(), old.weaveS(), old.rightM())),
                flown("pilot.approach.speed", Quantity.KNOTS, TENTH, (old, value) -> new FlownApproach(old.startM(), value, old.pathDeg(),
                        old.offsetDeg(), old.weaveDeg(), old.weaveS(), old.rightM())),
                flown("pilot.approach.path", Quantity.ANGLE, HUNDREDTH, (old, value) -> new FlownApproach(old.startM(),
                        old.groundSpeedKt(), value, old.offsetDeg(), old.weaveDeg(), old.weaveS(), old.rightM())),
                flown("pilot.approach.offset", Quantity.ANGLE, HUNDREDTH, (old, value) -> new FlownApproach(old.startM(),
                        old.groundSpeedKt(), old.pathDeg(), value, old.weaveDeg(), old.weaveS(), old.rightM())),
                flown("pilot.approach.weave", Quantity.ANGLE, HUNDREDTH, (old, value) -> new FlownApproach(old.startM(),
                        old.groundSpeedKt(), old.pathDeg(), old.offsetDeg(), value, old.weaveS(), old.rightM())),
                flown("pilot.approach.period", Quantity.NUMBER, TENTH, (old, value) -> new FlownApproach(old.startM(),
                        old.groundSpeedKt(), old.pathDeg(), old.offsetDeg(), old.weaveDeg(), value, old.rightM())),
                flown("pilot.approach.right", Quantity.LENGTH, TENTH, (old, value) -> new FlownApproach(old.startM(),
                        old.groundSpeedKt(), old.pathDeg(), old.offsetDeg(), old.weaveDeg(), old.weaveS(), value)));
    }

    private Combo combo(String key) {
        Combo combo = Named.name(new Combo(body, SWT.READ_ONLY), Messages.get(key));
        combo.setToolTipText(Messages.get(key));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(10, SWT.DEFAULT).applyTo(combo);
        return combo;
    }

    private void heading(String key) {
        Label label = new Label(body, SWT.NONE);
        label.setText(Messages.get(key));
        label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().span(2, 1).indent(0, 4).applyTo(label);
    }

    /** Shows what is chosen. */
    void update(List<ApproachAid> newAids, ApproachAid chosen, Daylight light) {
        String[] names = newAids.stream().map(PilotControls::name).toArray(String[]::new);
        if (!List.of(aids.getItems()).equals(List.of(names))) {
            aids.setItems(names);
        }
        shownAids = newAids;
        if (aids.getSelectionIndex() != newAids.indexOf(chosen)) {
            aids.select(newAids.indexOf(chosen));
        }
        lights.select(light.ordinal());
    }

    private static String name(ApproachAid aid) {
        String host = Projects.host(aid).map(MessageTexts::label).orElse("");
        String own = MessageTexts.label(aid);
        return host.isEmpty() || own.contains(host) ? own : own + "  (" + host + ")";
    }

    /** Shows where the eye is and what approach is flown. */
    void update(FramePoint newEye, FlownApproach newApproach) {
        eye = newEye;
        approach = newApproach;
        show(eyeFields, 0 - eye.alongM(), eye.rightM(), eye.heightM());
        show(approachFields, approach.startM(), approach.groundSpeedKt(), approach.pathDeg(), approach.offsetDeg(), approach.weaveDeg(),
                approach.weaveS(), approach.rightM());
    }

    private static void show(List<NumberField> fields, double... values) {
        for (int i = 0; i < values.length; i++) {
            fields.get(i).show(values[i]);
        }
    }

    /** Returns how wide it has to be for nothing to be cut off, pixels. */
    int width() {
        return body.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + scroll.getVerticalBar().getSize().x;
    }

    /** Returns its control. */
    public Control control() {
        return scroll;
    }

    /** Returns the choice of the aid. */
    public Combo aids() {
        return aids;
    }

    /** Returns the choice of day, dusk and night. */
    public Combo lights() {
        return lights;
    }

    /** Returns the fields of the eye: before the threshold, right of the axis, height. */
    public List<NumberField> eyeFields() {
        return eyeFields;
    }

    /** Returns the fields of the approach: start, ground speed, path, deviation, weave, its period, right of the axis. */
    public List<NumberField> approachFields() {
        return approachFields;
    }
}
