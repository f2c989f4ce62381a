package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.SiteRule;
import slopewright.evaluation.OpenData;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.siting.ElementNames;

/**
 * Figures of a runway that were copied from open data were compared with a survey or with the published data of the aerodrome. Weighs as
 * a failure, for thresholds and elevations carry everything else; but what was not compared is to clear up and not at fault, for it may be
 * right. A confirmation without source, or a source without its licence, is to clear up as well.
 */
public final class OpenDataRule extends SiteRule {
    /** Made by the service loader. */
    public OpenDataRule() {
        super("DATA-64", Severity.FAIL);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        for (Runway runway : project.getAerodrome().getRunways()) {
            boolean source = isSaid(runway.getOpenDataSource());
            boolean licence = isSaid(runway.getOpenDataLicence());
            List<Message> missing = OpenData.missing(runway);
            boolean confirmed = missing.size() < 3;
            if (!source && !licence && !confirmed) {
                continue;
            }
            Argument[] words = {ElementNames.of(runway), name(runway.getOpenDataSource()), name(runway.getOpenDataLicence()),
                    name(runway.getOpenDataConfirmation()), name(runway.getOpenDataConfirmationPerson()),
                    name(runway.getOpenDataConfirmationDate())};
            if (!source || !licence) {
                outcomes.notEvaluated(runway, List.of(Message.of("missing.open-data-source")), Message.of("DATA-64.no-source", words));
            } else if (missing.isEmpty()) {
                outcomes.about(runway).met(true).saying("confirmed", words).add();
            } else {
                outcomes.notEvaluated(runway, missing, Message.of("DATA-64.open", words));
            }
        }
    }

    private static boolean isSaid(String text) {
        return text != null && !text.isBlank();
    }

    private static Argument name(String text) {
        return isSaid(text) ? Words.name(text) : Words.term("unnamed");
    }
}
