package slopewright.ui.profile.internal.section;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.section.SectionLive;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.section.ReadoutPanel.Row;

/** What an edit would give, in lines. */
final class TrialRows {

    private static final int MOST_NAMED = 2;

    private TrialRows() {
    }

    /**
     * Returns the lines.
     *
     * @param result what would be
     */
    static List<Row> of(SectionTrial.Result result) {
        List<Row> rows = new ArrayList<>();
        result.problem().ifPresent(problem -> rows.add(new Row("", problem, ReadoutPanel.Sign.BAD)));
        result.live().ifPresent(live -> {
            boolean atRunway = live.drawn().host() instanceof RunwayEnd;
            Siting siting = live.siting();
            String origin = Messages.get(atRunway ? "section.read.threshold" : "section.read.hover-point");
            rows.add(Row.of(Messages.get("section.read.distance"), Messages.get("section.read.past", ScreenWords.exact(siting
                    .distanceM()), origin)));
            rows.add(Row.of(Messages.get("section.drag.eye"), Messages.get("section.read.over", ScreenWords.exact(siting.mehtM()),
                    origin)));
            live.wheelHeightM().ifPresent(height -> rows.add(Row.of(Messages.get("section.drag.wheels"), Messages.get(height >= 0
                    ? "section.read.over" : "section.read.under", ScreenWords.exact(Math.abs(height)), origin), height > 0)));
            rows.add(obstacles(live, result));
        });
        if (result.problem().isEmpty()) {
            rows.add(rules(result));
        }
        return rows;
    }

    private static Row obstacles(SectionLive live, SectionTrial.Result result) {
        String name = Messages.get("section.drag.obstacles");
        if (live.siting().surface().isEmpty()) {
            return Row.of(name, Messages.get("section.drag.no-surface"));
        }
        if (result.excessM().isEmpty()) {
            return Row.of(name, Messages.get("section.drag.no-obstacle"), true);
        }
        double excess = result.excessM().getAsDouble();
        return Row.of(name, Messages.get(excess > 0 ? "section.drag.through" : "section.drag.clear", ScreenWords.exact(Math.abs(excess))),
                excess <= 0);
    }

    private static Row rules(SectionTrial.Result result) {
        String name = Messages.get("section.drag.rules");
        List<String> broken = result.broken();
        if (broken.isEmpty()) {
            return Row.of(name, Messages.get("section.drag.all-met"), true);
        }
        String named = String.join(", ", broken.subList(0, Math.min(MOST_NAMED, broken.size())));
        return Row.of(name, Messages.get("section.drag.broken", broken.size(), named), false);
    }
}
