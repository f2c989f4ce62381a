package slopewright.ui.profile.internal.section;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import slopewright.checks.Verdict;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.siting.Siting;
import slopewright.ui.MessageTexts;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.section.ReadoutPanel.Row;
import slopewright.ui.trial.TrialVerdict;

/** What an edit would give, in lines. */
final class TrialRows {

    private TrialRows() {
    }

    /**
     * Returns the lines.
     *
     * @param result  what would be
     * @param verdict what all rules say of it
     */
    static List<Row> of(SectionTrial.Result result, TrialVerdict verdict) {
        List<Row> rows = new ArrayList<>();
        result.problem().ifPresent(problem -> rows.add(new Row("", problem, ReadoutPanel.Sign.BAD)));
        result.section().ifPresent(section -> {
            Siting siting = section.siting();
            String origin = Messages.get(section.drawn().atRunway() ? "section.read.threshold" : "section.read.hover-point");
            rows.add(Row.of(Messages.get("section.read.distance"), Messages.get("section.read.past", ScreenWords.exact(siting
                    .distanceM()), origin)));
            rows.add(Row.of(Messages.get("section.drag.eye"), Messages.get("section.read.over", ScreenWords.exact(siting.mehtM()),
                    origin)));
            section.wheelHeightM().ifPresent(height -> rows.add(Row.of(Messages.get("section.drag.wheels"), Messages.get(height >= 0
                    ? "section.read.over" : "section.read.under", ScreenWords.exact(Math.abs(height)), origin), height > 0)));
            rows.add(obstacles(result));
        });
        if (result.problem().isEmpty()) {
            verdict.lines().forEach(said -> rows.add(new Row("", said.text(), said.sign().map(TrialRows::sign)
                    .orElse(ReadoutPanel.Sign.NONE))));
        }
        return rows;
    }

    /** The margin of what governs; a tick only where all that is entered was compared and a survey reaches as far. */
    private static Row obstacles(SectionTrial.Result result) {
        String name = Messages.get("section.drag.obstacles");
        if (result.obstacles().value().isEmpty()) {
            return Row.of(name, result.obstacles().reason().map(MessageTexts::of).orElse(""));
        }
        SurfaceComparison found = result.obstacles().value().get();
        if (found.isPenetrated()) {
            return Row.of(name, Messages.get("section.drag.through", ScreenWords.exact(-found.governingUnshielded().orElseThrow()
                    .marginM())), false);
        }
        if (!found.uncompared().isEmpty()) {
            return Row.of(name, Messages.get("section.drag.not-all"));
        }
        if (found.isUnsurveyed() && !result.surveyed()) {
            return Row.of(name, Messages.get("section.drag.no-survey"));
        }
        OptionalDouble margin = found.marginM();
        String text = margin.isEmpty() ? Messages.get("section.drag.no-obstacle") : Messages.get(margin.getAsDouble() < 0
                ? "section.drag.shielded" : "section.drag.clear", ScreenWords.exact(Math.abs(margin.getAsDouble())));
        return result.surveyed() ? Row.of(name, text, true) : Row.of(name, text);
    }

    private static ReadoutPanel.Sign sign(Verdict verdict) {
        return switch (verdict) {
            case NOT_MET -> ReadoutPanel.Sign.BAD;
            case TO_CLEAR_UP -> ReadoutPanel.Sign.WARNING;
            case MET -> ReadoutPanel.Sign.GOOD;
            case NOT_APPLICABLE -> ReadoutPanel.Sign.NONE;
        };
    }
}
