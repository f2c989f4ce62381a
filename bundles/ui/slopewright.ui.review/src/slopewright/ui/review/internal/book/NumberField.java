package slopewright.ui.review.internal.book;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.siting.ValueNames;
import slopewright.standards.RuleChoice;
import slopewright.standards.ValueBook;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.review.internal.FieldFault;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** Where the number that a document says is typed, or the word of a choice is picked. */
final class NumberField {
    private static final int WIDTH = 340;

    private final Label label;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final Text text;
    private final Combo combo;
    private List<RuleChoice> words = List.of();

    NumberField(Composite area) {
        label = new Label(area, SWT.NONE);
        stack = new Composite(area, SWT.NONE);
        stack.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(stack);
        text = new Text(stack, SWT.BORDER);
        combo = new Combo(stack, SWT.READ_ONLY);
    }

    /** Asks for the number of a value, with the one that was entered before for a correction. */
    void show(ValueBook.Entry entry) {
        boolean isTable = entry.unit().isEmpty();
        words = RuleChoice.Kind.of(entry.key()).map(RuleChoice.Kind::words).orElse(List.of());
        String unit = isTable || !words.isEmpty() ? "" : " (" + OutcomeTexts.unit(entry.unit()) + ")";
        label.setText(Messages.get(isTable ? "value.total" : words.isEmpty() ? "value.typed" : "value.word") + unit + ":");
        text.setText(entry.ownValue().map(own -> MessageTexts.renderer().exact(own)).orElse(""));
        combo.setItems(words.stream().map(word -> MessageTexts.of(ValueNames.number(entry.key(), word.place(), word.kind().unit())))
                .toArray(String[]::new));
        layout.topControl = words.isEmpty() ? text : combo;
        stack.layout();
    }

    void enable(boolean enabled) {
        text.setEnabled(enabled);
        combo.setEnabled(enabled);
    }

    void focus() {
        layout.topControl.setFocus();
    }

    /** Returns what was typed or picked, as it is read there. */
    String text() {
        return words.isEmpty() ? text.getText().strip() : combo.getText();
    }

    /** Returns the number, or the place of the word; empty where it is none. */
    Optional<Double> number() {
        if (!words.isEmpty()) {
            int index = combo.getSelectionIndex();
            return index < 0 ? Optional.empty() : Optional.of((double) words.get(index).place());
        }
        return text.getText().isBlank() || fault().isPresent() ? Optional.empty()
                : Optional.of(QuantityFormat.preferred().read(text.getText(), Quantity.NUMBER));
    }

    /** Returns why what was typed is no number; empty where it is one, or nothing was typed or picked. */
    Optional<FieldFault> fault() {
        if (!words.isEmpty() || text.getText().isBlank()) {
            return Optional.empty();
        }
        try {
            QuantityFormat.preferred().read(text.getText(), Quantity.NUMBER);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(fault(e.getMessage()));
        }
    }

    /** Returns a fault of what was typed or picked. */
    FieldFault fault(String why) {
        return new FieldFault(layout.topControl, label.getText().replace("&", "") + " " + why);
    }

    Control control() {
        return layout.topControl;
    }
}
