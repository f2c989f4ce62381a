package slopewright.ui.review.internal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;

import slopewright.messages.Printable;
import slopewright.model.util.KeptValues;
import slopewright.standards.SignedNames;

/**
 * What is wrong in a field of a dialog. It is said at the head of the dialog behind the name of the field, which gets the focus; what was
 * typed stays as it is, and the words go as soon as something else stands there.
 *
 * @param field the field, or another control that asks
 * @param why   one sentence for people
 */
public record FieldFault(Control field, String why) {

    private static final int MOST_QUOTED = 40;

    /** Says it at the head of a dialog and leads to the field. */
    public void show(TitleAreaDialog dialog) {
        dialog.setErrorMessage(why);
        field.setFocus();
        if (field instanceof Text text && (text.getStyle() & SWT.MULTI) == 0) {
            text.selectAll();
        }
        Listener once = new Listener() {
            @Override
            public void handleEvent(Event event) {
                field.removeListener(SWT.Modify, this);
                field.removeListener(SWT.Selection, this);
                dialog.setErrorMessage(null);
            }
        };
        field.addListener(SWT.Modify, once);
        field.addListener(SWT.Selection, once);
    }

    /** Returns the fault of a field, behind the name that stands before the field. */
    public static FieldFault of(Text field, String key, Object... words) {
        return new FieldFault(field, name(field) + ": " + Messages.get(key, words));
    }

    private static String name(Text field) {
        String name = "";
        for (Control sibling : field.getParent().getChildren()) {
            if (sibling == field) {
                break;
            }
            name = sibling instanceof Label label ? label.getText() : name;
        }
        return name.replace("&", "").replaceAll("\\s*:$", "");
    }

    /** Returns why a text cannot be kept; empty where it can. */
    public static Optional<FieldFault> text(Text field) {
        return KeptValues.alien(field.getText()).map(letter -> of(field, "field.character", letter));
    }

    /** Returns why what was typed names nobody; empty where it names somebody. */
    public static Optional<FieldFault> named(Text field) {
        String typed = field.getText().strip();
        if (typed.isEmpty()) {
            return Optional.of(of(field, "field.no-name-yet"));
        }
        return text(field).or(() -> SignedNames.isName(typed) ? Optional.empty() : Optional.of(of(field, "field.no-name", quoted(typed))));
    }

    /**
     * Returns why what was typed is no day on which somebody did something; empty where it is one.
     *
     * @param field where it was typed
     * @param today the last day that counts
     */
    public static Optional<FieldFault> day(Text field, LocalDate today) {
        String typed = field.getText().strip();
        if (typed.isEmpty()) {
            return Optional.of(of(field, "field.no-day-yet"));
        }
        try {
            return LocalDate.parse(typed).isAfter(today) ? Optional.of(of(field, "field.future", typed)) : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.of(of(field, "field.no-day", quoted(typed)));
        }
    }

    /** Returns the beginning of what was typed, in one line. */
    public static String quoted(String typed) {
        String line = Printable.of(typed.strip());
        return line.codePointCount(0, line.length()) <= MOST_QUOTED ? line
                : line.substring(0, line.offsetByCodePoints(0, MOST_QUOTED)) + "\u2026";
    }
}
