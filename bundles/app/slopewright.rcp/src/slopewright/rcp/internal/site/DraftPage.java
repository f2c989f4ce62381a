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

import slopewright.evaluation.site.SiteNumber;
import slopewright.rcp.internal.Messages;
import slopewright.ui.units.QuantityFormat;

/** A step of the wizard with numbers in it; says below the title what is wrong, or what is still assumed. */
abstract class DraftPage extends WizardPage {

    private final Map<SiteNumber, Text> texts = new EnumMap<>(SiteNumber.class);
    private final Map<SiteNumber, Label> remarks = new EnumMap<>(SiteNumber.class);
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
    void row(Composite parent, SiteNumber number) {
        String unit = QuantityFormat.preferred().unit(SiteDraft.quantity(number));
        String words = SiteDraft.label(number) + (unit.isEmpty() ? "" : " (" + unit + ")");
        Text text = Answers.text(parent, words, draft.text(number), typed -> {
            draft.type(number, typed);
            review();
        });
        text.setData("field", number);
        texts.put(number, text);
        remarks.put(number, Answers.label(parent, Messages.get("site.assumed")));
    }

    /** Begins in the first field, whatever led here. */
    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            getControl().setFocus();
        }
    }

    /** Shows what the draft holds, after a template was taken. */
    void reload() {
        texts.forEach((number, text) -> text.setText(draft.text(number)));
    }

    /** Looks through what is typed. */
    void review() {
        texts.forEach((number, text) -> text.setEnabled(number.isAsked(draft.site().isHelipad())));
        remarks.forEach((number, label) -> label.setVisible(number.isAsked(draft.site().isHelipad()) && draft.site().isAssumed(number)));
        Optional<String> problem = problem();
        setErrorMessage(problem.orElse(null));
        boolean assumed = remarks.values().stream().anyMatch(Label::getVisible);
        setMessage(assumed ? Messages.get("site.check-assumed") : null, IMessageProvider.INFORMATION);
        setPageComplete(problem.isEmpty());
    }

    /** Returns the first thing that is wrong on this page. */
    Optional<String> problem() {
        List<SiteNumber> numbers = Stream.of(SiteNumber.values()).filter(texts::containsKey).toList();
        return numbers.stream().map(draft::problem).flatMap(Optional::stream).filter(Objects::nonNull).findFirst();
    }
}
