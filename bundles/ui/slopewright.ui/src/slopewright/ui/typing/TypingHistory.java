package slopewright.ui.typing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/**
 * What was typed into the field that has the focus, since it has it: so that undo takes letters back there, and not an edit of the project
 * behind it. Letters of one word are one step. Where the focus goes on, the history of the field ends. Used on the user interface thread.
 */
public final class TypingHistory {

    private static final String KEY = TypingHistory.class.getName();

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<Text> field = Optional.empty();
    private final List<Step> steps = new ArrayList<>();
    private int now;
    private boolean isMoving;

    /** What a field held, and where its caret was; whether a single letter led to it. */
    private record Step(String text, int caret, boolean isLetter) {
    }

    private TypingHistory(Display display) {
        display.addFilter(SWT.FocusIn, this::begin);
        display.addFilter(SWT.FocusOut, event -> end());
        display.addFilter(SWT.Dispose, event -> field.filter(text -> text == event.widget).ifPresent(text -> end()));
        display.addFilter(SWT.Modify, this::modified);
    }

    /** Returns that of a display, from the first call on. */
    public static TypingHistory of(Display display) {
        if (!(display.getData(KEY) instanceof TypingHistory known)) {
            TypingHistory made = new TypingHistory(display);
            display.setData(KEY, made);
            return made;
        }
        return known;
    }

    /** Adds a listener, which is told when something can be taken back or made again that could not before, and the other way round. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    private void begin(Event event) {
        end();
        if (event.widget instanceof Text text && text.getEditable()) {
            field = Optional.of(text);
            steps.add(new Step(text.getText(), text.getCaretPosition(), false));
        }
    }

    private void end() {
        field = Optional.empty();
        steps.clear();
        now = 0;
        tell();
    }

    private void modified(Event event) {
        if (isMoving || field.isEmpty() || field.get() != event.widget) {
            return;
        }
        Text text = field.get();
        Step before = steps.get(now);
        String typed = text.getText();
        if (typed.equals(before.text())) {
            return;
        }
        int caret = text.getCaretPosition();
        boolean isLetter = typed.length() == before.text().length() + 1 && !typed.isBlank()
                && !Character.isWhitespace(typed.charAt(Math.max(0, Math.min(caret, typed.length()) - 1)));
        steps.subList(now + 1, steps.size()).clear();
        if (isLetter && before.isLetter()) {
            steps.remove(now);
            now--;
        }
        steps.add(new Step(typed, caret, isLetter));
        now++;
        tell();
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    /** Returns whether something was typed into the field that has the focus, so that undo and redo are those of the field. */
    public boolean isTyped() {
        return steps.size() > 1;
    }

    /** Returns whether something can be taken back in the field. */
    public boolean canUndo() {
        return now > 0;
    }

    /** Returns whether something can be made again in the field. */
    public boolean canRedo() {
        return now < steps.size() - 1;
    }

    /** Takes the last step back. */
    public void undo() {
        if (canUndo()) {
            go(now - 1);
        }
    }

    /** Makes the step again that was taken back last. */
    public void redo() {
        if (canRedo()) {
            go(now + 1);
        }
    }

    private void go(int to) {
        now = to;
        isMoving = true;
        try {
            Text text = field.orElseThrow();
            text.setText(steps.get(to).text());
            text.setSelection(steps.get(to).caret());
        } finally {
            isMoving = false;
        }
        tell();
    }
}
