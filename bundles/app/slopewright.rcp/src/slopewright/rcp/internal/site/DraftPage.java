package slopewright.rcp.internal.site;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import slopewright.rcp.internal.Messages;
import slopewright.ui.units.QuantityFormat;

/** A step of the wizard with numbers in it; says below the title what is wrong, or what is still assumed. */
abstract class DraftPage extends WizardPage {

    private final Map<SiteField, Text> texts = new EnumMap<>(SiteField.class);
    private final Map<SiteField, Label> remarks = new EnumMap<>(SiteField.class);
    private final SiteDraft draft;

    DraftPage(String name, SiteDraft draft) {
        super(name);
        this.draft = draft;
        setTitle(Messages.get(name + ".title"));
        setDescription(Messages.get(name + ".hint"));
    }

    SiteDraft draft() {
        return draft;
    }

    /** Adds the row of a number: label with unit, text, and the remark that it is assumed. */
    void row(Composite parent, SiteField field) {
        String unit = QuantityFormat.preferred().unit(field.quantity());
        String words = Messages.get(field.key()) + (unit.isEmpty() ? "" : " (" + unit + ")");
        Text text = Answers.text(parent, words, draft.text(field), typed -> {
            draft.type(field, typed);
            review();
        });
        text.setData("field", field);
        texts.put(field, text);
        remarks.put(field, Answers.label(parent, Messages.get("site.assumed")));
    }

    /** Shows what the draft holds, after a template was taken. */
    void reload() {
        texts.forEach((field, text) -> text.setText(draft.text(field)));
    }

    /** Looks through what is typed. */
    void review() {
        texts.forEach((field, text) -> text.setEnabled(field.isAsked(draft.isHelipad())));
        remarks.forEach((field, label) -> label.setVisible(field.isAsked(draft.isHelipad()) && draft.isAssumed(field)));
        Optional<String> problem = problem();
        setErrorMessage(problem.orElse(null));
        boolean assumed = remarks.values().stream().anyMatch(Label::getVisible);
        setMessage(assumed ? Messages.get("site.check-assumed") : null, IMessageProvider.INFORMATION);
        setPageComplete(problem.isEmpty());
    }

    /** Returns the first thing that is wrong on this page. */
    Optional<String> problem() {
        List<SiteField> fields = Stream.of(SiteField.values()).filter(texts::containsKey).toList();
        return fields.stream().map(draft::problem).flatMap(Optional::stream).filter(Objects::nonNull).findFirst();
    }
}
