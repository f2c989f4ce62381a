package slopewright.checks.internal.data;

import java.util.regex.Pattern;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;

/**
 * Heights are differences of elevations, so all must count from the same named datum, which is a level surface: above an ellipsoid the
 * elevations of a published runway, of a survey and of an antenna differ by the undulation. A warning: the name itself changes no number.
 */
public final class VerticalDatumRule extends ProjectRule {
    private static final Pattern ELLIPSOID = Pattern
            .compile("(?iu)ellipso[i\u00ef]d|\\bhae\\b|\\bwgs[ _-]?84\\b|\\bgrs[ _-]?80\\b");
    private static final Pattern LEVEL = Pattern.compile("(?iu)geoid|\\begm|\\bmsl\\b|sea level|orthometr|normal height");

    /** Made by the service loader. */
    public VerticalDatumRule() {
        super("DATA-12", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome != null && !evaluation.aids().isEmpty()) {
            Missing missing = new Missing();
            missing.unless(aerodrome.getVerticalDatum() != null && !aerodrome.getVerticalDatum().isBlank(), "missing.vertical-datum");
            if (missing.names().isEmpty() && isEllipsoid(aerodrome.getVerticalDatum())) {
                outcomes.about(aerodrome).met(false).saying("ellipsoid", Words.name(aerodrome.getVerticalDatum())).advising("correct")
                        .add();
            } else {
                missing.report(aerodrome, outcomes, Message.of("DATA-12.named", Words.name(aerodrome.getVerticalDatum())));
            }
        }
    }

    /** Whether a name is that of an ellipsoid, or of heights above one, and of no level surface. */
    private static boolean isEllipsoid(String name) {
        return ELLIPSOID.matcher(name).find() && !LEVEL.matcher(name).find();
    }
}
