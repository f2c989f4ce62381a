package slopewright.rcp.internal.site;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.rcp.internal.Messages;
import slopewright.siting.Families;
import slopewright.siting.SitingException;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;

/**
 * The last step: which family of indicator; what fits comes first, and what does not says why. What is shown of a family is read from the
 * project that the wizard would write.
 */
final class FamilyPage extends WizardPage {

    private final SiteDraft draft;
    private List<FamilyOffer> offers = List.of();
    private Table table;
    private Text reason;
    private LayoutPreview preview;

    FamilyPage(SiteDraft draft) {
        super("page.family");
        this.draft = draft;
        setTitle(Messages.get("page.family.title"));
        setDescription(Messages.get("page.family.hint"));
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).equalWidth(true).applyTo(area);
        table = new Table(area, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        AccessibleName.give(table, getTitle());
        table.setHeaderVisible(true);
        column("family.name", 230);
        column("family.verdict", 110);
        GridDataFactory.fillDefaults().grab(true, true).hint(360, 220).applyTo(table);
        table.addListener(SWT.Selection, event -> choose());
        preview = new LayoutPreview(area);
        GridDataFactory.fillDefaults().grab(true, true).hint(360, 220).applyTo(preview);
        reason = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(SWT.DEFAULT, 90).applyTo(reason);
        setControl(area);
    }

    private void column(String key, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(Messages.get(key));
        column.setWidth(width);
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            compare();
        }
        super.setVisible(visible);
    }

    private void compare() {
        offers = FamilyOffer.all(draft);
        table.removeAll();
        for (FamilyOffer offer : offers) {
            new TableItem(table, SWT.NONE).setText(new String[] {MessageTexts.of(Families.name(offer.family())), offer.fit().words()});
        }
        int wanted = offers.stream().map(offer -> offer.family().key()).toList().indexOf(draft.familyKey());
        table.select(Math.max(0, wanted));
        choose();
    }

    private void choose() {
        int index = table.getSelectionIndex();
        if (index < 0) {
            setPageComplete(false);
            return;
        }
        FamilyOffer offer = offers.get(index);
        draft.setFamilyKey(offer.family().key());
        reason.setText(offer.words());
        preview.show(picture(offer));
        setPageComplete(offer.isOffered());
        setErrorMessage(offer.isOffered() ? null : Messages.get(offer.made().isPresent() ? "family.no-offer" : "family.no-layout",
                offer.made().isPresent() ? rules(offer) : offer.refused()));
        if (offer.notMet().isEmpty() && draft.site().known().isPresent()) {
            setMessage(Messages.get("site.open-data"), IMessageProvider.INFORMATION);
        } else {
            setMessage(offer.notMet().isEmpty() ? null : Messages.get("family.breaks", rules(offer)), IMessageProvider.WARNING);
        }
    }

    private static String rules(FamilyOffer offer) {
        return String.join(", ", offer.notMet().stream().map(outcome -> outcome.rule()).distinct().toList());
    }

    private static Optional<Scene> picture(FamilyOffer offer) {
        try {
            return offer.first().map(aid -> PlanScene.layout(DrawnAid.of(aid, MessageTexts.renderer())));
        } catch (SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
