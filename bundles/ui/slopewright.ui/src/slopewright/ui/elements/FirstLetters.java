package slopewright.ui.elements;

import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** Chooses an entry of a list by the letters that its name begins with, typed one shortly after the other. */
final class FirstLetters {

    private static final int PATIENCE_MS = 1500;

    private final Supplier<List<String>> names;
    private final IntConsumer chosen;
    private String typed = "";
    private int last;

    private FirstLetters(Supplier<List<String>> names, IntConsumer chosen) {
        this.names = names;
        this.chosen = chosen;
    }

    /**
     * Lets the letters typed in a control choose.
     *
     * @param control the list
     * @param names   the names of its entries
     * @param chosen  is told the number of the entry that is meant
     * @return what keeps the letters
     */
    static FirstLetters install(Control control, Supplier<List<String>> names, IntConsumer chosen) {
        FirstLetters letters = new FirstLetters(names, chosen);
        control.addListener(SWT.KeyDown, letters::key);
        return letters;
    }

    /** Begins a new name. */
    void forget() {
        typed = "";
    }

    private void key(Event event) {
        boolean letter = event.character >= ' ' && event.character != SWT.DEL && (event.stateMask & (SWT.MOD1 | SWT.MOD3)) == 0;
        if (!letter) {
            return;
        }
        event.doit = false;
        typed = event.time - last > PATIENCE_MS ? "" : typed;
        last = event.time;
        typed += Character.toString(event.character).toLowerCase(Locale.ROOT);
        List<String> all = names.get();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).toLowerCase(Locale.ROOT).startsWith(typed)) {
                chosen.accept(i);
                return;
            }
        }
    }
}
