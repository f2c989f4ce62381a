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
import slopewright.edit.AddAid;
import slopewright.edit.EditException;
import slopewright.edit.EditHistory;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.rcp.internal.Messages;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The third step: which family of indicator; what fits comes first, and what does not says why. */
final class FamilyPage extends WizardPage {

    private final SiteDraft draft;
    private List<Candidate> candidates = List.of();
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
        Project project = draft.project();
        ApproachHost host = Projects.hosts(project).get(0);
        List<Candidate> all = FamilyComparison.of(ProjectEvaluation.of(project, Optional.empty()), host);
        candidates = all.stream().sorted((first, second) -> Integer.compare(rank(first), rank(second))).toList();
        table.removeAll();
        for (Candidate candidate : candidates) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {candidate.family().name(), verdict(candidate)});
        }
        int wanted = candidates.stream().map(candidate -> candidate.family().key()).toList().indexOf(draft.familyKey());
        table.select(Math.max(0, wanted));
        choose();
    }

    private int rank(Candidate candidate) {
        if (candidate.fit() == Candidate.Fit.DOES_NOT_FIT) {
            return candidate.siting().isPresent() ? 2 : 3;
        }
        return candidate.fits() && candidate.rules().key().equals(draft.rules().key()) ? 0 : 1;
    }

    private String verdict(Candidate candidate) {
        return Messages.get(switch (rank(candidate)) {
            case 0 -> "family.fits";
            case 1 -> "family.with-care";
            case 2 -> "family.forbidden";
            default -> "family.impossible";
        });
    }

    private void choose() {
        int index = table.getSelectionIndex();
        if (index < 0) {
            setPageComplete(false);
            return;
        }
        Candidate candidate = candidates.get(index);
        draft.setFamilyKey(candidate.family().key());
        reason.setText(words(candidate));
        preview.show(picture(candidate));
        setPageComplete(candidate.siting().isPresent());
        setErrorMessage(candidate.siting().isPresent() ? null : Messages.get("family.no-layout", reasons(candidate)));
        setMessage(rank(candidate) == 2 ? reasons(candidate) : null, IMessageProvider.WARNING);
    }

    private static String reasons(Candidate candidate) {
        return String.join("\n", candidate.reasons().stream().map(MessageTexts::of).toList());
    }

    private static String words(Candidate candidate) {
        if (candidate.siting().isEmpty()) {
            return reasons(candidate);
        }
        QuantityFormat format = QuantityFormat.preferred();
        String text = Messages.get("family.layout", candidate.siting().get().units().size(),
                format.showWithUnit(candidate.siting().get().distanceM(), Quantity.LENGTH),
                format.showWithUnit(candidate.siting().get().slopeDeg(), Quantity.ANGLE),
                format.showWithUnit(candidate.siting().get().mehtM(), Quantity.LENGTH), candidate.rules().descriptor().name());
        return candidate.reasons().isEmpty() ? text : text + "\n" + reasons(candidate);
    }

    private Optional<Scene> picture(Candidate candidate) {
        if (candidate.siting().isEmpty()) {
            return Optional.empty();
        }
        try {
            AddAid edit = AddAid.proposed(Projects.hosts(draft.project()).get(0), candidate, false);
            new EditHistory().perform(edit);
            return Optional.of(PlanScene.layout(DrawnAid.of(AidEvaluation.of(edit.aid(), candidate.rules(),
                    new EvaluationCache()), MessageTexts.renderer())));
        } catch (SitingException | EditException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
