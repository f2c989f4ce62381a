package slopewright.ui.profile.internal.pilot;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;

import slopewright.ui.profile.internal.Messages;

/** Flies the approach: to its start, on and off, in steps, to any place, quicker; and holds flashing lights on. */
public final class PlayBar {

    private static final int STEPS = 1000;
    private static final int GAP = 4;
    private static final int LEAST_SLIDER = 80;
    private static final double[] FACTORS = {0.5, 1, 2, 4, 8};
    private static final int USUAL_FACTOR = 2;

    private final Composite bar;
    private final Composite keys;
    private final Composite rest;
    private final Button play;
    private final Scale slider;
    private final Label time;
    private final Combo factors;
    private final Button hold;

    /**
     * What is told of the controls.
     *
     * @param play   whether to fly
     * @param step   seconds to go on
     * @param seek   share of the approach to go to, from 0 to 1
     * @param factor how many times quicker than in nature
     * @param hold   whether to hold lights on
     */
    public record Target(Runnable play, DoubleConsumer step, DoubleConsumer seek, DoubleConsumer factor, Consumer<Boolean> hold) {
    }

    /** Makes the controls. */
    public PlayBar(Composite parent, Target target) {
        bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        keys = new Composite(bar, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(keys);
        rest = new Composite(bar, SWT.NONE);
        button("pilot.play.start", "\u2502\u25C0", () -> target.seek().accept(0));
        button("pilot.play.back", "\u2212" + "1\u202Fs", () -> target.step().accept(-Playback.STEP_S));
        play = button("pilot.play.play", "\u25B6", target.play());
        button("pilot.play.on", "+1\u202Fs", () -> target.step().accept(Playback.STEP_S));
        slider = Named.name(new Scale(keys, SWT.HORIZONTAL), Messages.get("pilot.play.slider"));
        slider.setMaximum(STEPS);
        slider.setPageIncrement(STEPS / 20);
        slider.setToolTipText(Messages.get("pilot.play.slider"));
        slider.addListener(SWT.Selection, event -> target.seek().accept(slider.getSelection() / (double) STEPS));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(LEAST_SLIDER, SWT.DEFAULT).applyTo(slider);
        time = new Label(rest, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(time);
        factors = Named.name(new Combo(rest, SWT.READ_ONLY), Messages.get("pilot.play.factor"));
        factors.setToolTipText(Messages.get("pilot.play.factor"));
        for (double factor : FACTORS) {
            factors.add("\u00D7 " + (factor < 1 ? String.valueOf(factor) : String.valueOf(Math.round(factor))));
        }
        factors.select(USUAL_FACTOR);
        factors.addListener(SWT.Selection, event -> target.factor().accept(FACTORS[factors.getSelectionIndex()]));
        target.factor().accept(FACTORS[USUAL_FACTOR]);
        hold = new Button(rest, SWT.CHECK);
        hold.setText(Messages.get("pilot.play.hold"));
        hold.setToolTipText(Messages.get("pilot.play.hold.tip"));
        hold.addListener(SWT.Selection, event -> target.hold().accept(hold.getSelection()));
        for (Composite part : List.of(keys, rest)) {
            GridLayoutFactory.fillDefaults().numColumns(part.getChildren().length).spacing(GAP, 0).applyTo(part);
        }
        GridLayoutFactory.fillDefaults().numColumns(2).margins(GAP, 2).spacing(GAP, 2).applyTo(bar);
        bar.addListener(SWT.Resize, event -> fit());
    }

    /** Where all has no room in one row, it takes two. */
    private void fit() {
        int wanted = keys.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + rest.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + 3 * GAP;
        GridLayout layout = (GridLayout) bar.getLayout();
        int columns = wanted > bar.getSize().x ? 1 : 2;
        if (layout.numColumns != columns) {
            layout.numColumns = columns;
            bar.requestLayout();
        }
    }

    private Button button(String key, String sign, Runnable work) {
        Button button = Named.name(new Button(keys, SWT.PUSH), Messages.get(key));
        button.setText(sign);
        button.setToolTipText(Messages.get(key));
        button.addListener(SWT.Selection, event -> work.run());
        return button;
    }

    /** Shows where the approach is. */
    void update(Playback playback) {
        String sign = playback.isPlaying() ? "\u275A\u275A" : "\u25B6";
        if (!sign.equals(play.getText())) {
            play.setText(sign);
            play.setToolTipText(Messages.get(playback.isPlaying() ? "pilot.play.pause" : "pilot.play.play"));
        }
        int at = (int) Math.round(STEPS * playback.timeS() / playback.approach().durationS());
        if (slider.getSelection() != at) {
            slider.setSelection(at);
        }
        String text = clock(playback.timeS()) + " / " + clock(playback.approach().durationS());
        if (!text.equals(time.getText())) {
            boolean longer = text.length() > time.getText().length();
            time.setText(text);
            if (longer) {
                fit();
                bar.layout(true, true);
            }
        }
        if (hold.getSelection() != playback.isHeld()) {
            hold.setSelection(playback.isHeld());
        }
    }

    private static String clock(double seconds) {
        long whole = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    /** Returns the button that flies and stops. */
    public Button play() {
        return play;
    }

    /** Returns the slider over the approach. */
    public Scale slider() {
        return slider;
    }

    /** Returns the choice of the speed. */
    public Combo factors() {
        return factors;
    }

    /** Returns the switch that holds lights on. */
    public Button hold() {
        return hold;
    }
}
