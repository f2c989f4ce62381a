package slopewright.ui.properties;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.edit.TakeGround;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.GroundUsed;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.terrain.TakenGround;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/**
 * Offers the ground of models of the terrain as the side levels of a runway end: shows beforehand each place with what is entered and what
 * the models have, whose they are and how well they know it, and what the check says differently; then takes it as one step.
 */
public final class TerrainOffer {

    private TerrainOffer() {
    }

    /** Returns the aid in whose line ground would be taken: that which an element is or belongs to, or the only one of a runway end. */
    public static Optional<ApproachAid> aid(Identified element) {
        Optional<ApproachAid> own = element instanceof RunwayEnd end && end.getAids().size() == 1 ? Optional.of(end.getAids().get(0))
                : Projects.aid(element);
        return own.filter(aid -> Projects.host(aid).filter(RunwayEnd.class::isInstance).isPresent());
    }

    /**
     * Asks, and takes the ground where the answer is yes. Where none can be taken it says why and changes nothing.
     *
     * @param shell    the shell above which it asks
     * @param document the document of the aid
     * @param aid      an aid at a runway end
     */
    public static void ask(Shell shell, ProjectDocument document, ApproachAid aid) {
        RunwayEnd end = (RunwayEnd) Projects.host(aid).orElseThrow();
        String title = PropertyTexts.get("sheet.terrain").replace("…", "");
        try {
            TakenGround ground = read(document, aid);
            List<OutcomeChange> changes = VerdictChanges.of(document, copy -> TakeGround.of((RunwayEnd) find(copy, end), ground)
                    .execute());
            if (new TerrainDialog(shell, title, question(document, aid, end, ground), ground, changes).open() == Window.OK) {
                document.history().perform(TakeGround.of(end, ground));
            }
        } catch (SitingException e) {
            MessageDialog.openInformation(shell, title, PropertyTexts.get("terrain.none", MessageTexts.label(end),
                    MessageTexts.of(e.reason())));
        } catch (IllegalArgumentException e) {
            MessageDialog.openInformation(shell, title, PropertyTexts.get("terrain.none", MessageTexts.label(end), MessageTexts.reason(e)));
        }
    }

    /** What the window holds may not have read its survey points yet; a copy reads them. */
    private static TakenGround read(ProjectDocument document, ApproachAid aid) {
        TakenGround[] ground = new TakenGround[1];
        RuntimeException[] failed = new RuntimeException[1];
        BusyIndicator.showWhile(Display.getCurrent(), () -> {
            try {
                ProjectEvaluation copy = document.snapshot();
                AidEvaluation evaluation = copy.aid((ApproachAid) find(copy.project(), aid));
                ground[0] = TakenGround.of(evaluation, TakenGround.USUAL_STEP_M);
            } catch (RuntimeException e) {
                failed[0] = e;
            }
        });
        if (failed[0] != null) {
            throw failed[0];
        }
        return ground[0];
    }

    private static Identified find(Project copy, Identified element) {
        return Ids.find(copy, element.getId()).orElseThrow();
    }

    private static String question(ProjectDocument document, ApproachAid aid, RunwayEnd end, TakenGround ground) {
        QuantityFormat format = QuantityFormat.preferred();
        String side = PropertyTexts.get(ground.rightM() < 0 ? "terrain.left" : "terrain.right",
                format.showWithUnit(Math.abs(ground.rightM()), Quantity.LENGTH));
        String datum = Optional.ofNullable(document.project().getAerodrome()).map(Aerodrome::getVerticalDatum)
                .filter(name -> !name.isBlank()).orElseGet(() -> PropertyTexts.get("terrain.datum.unsaid"));
        return PropertyTexts.get("terrain.question", MessageTexts.label(end), side, ground.source(), ground.date(),
                format.showWithUnit(ground.accuracyM(), Quantity.LENGTH), datum) + "\n\n"
                + PropertyTexts.get("terrain.present", MessageTexts.of(GroundUsed.of(document.evaluation(aid).orThrow()))) + "\n\n"
                + PropertyTexts.get("terrain.after");
    }
}
