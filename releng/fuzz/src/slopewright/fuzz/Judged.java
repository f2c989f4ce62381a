package slopewright.fuzz;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/**
 * Looks for a false yes: changes some entries of a project, reads it again as a file, checks it, and changes it step by step in ways of
 * which it is known what they may do to the verdicts ({@link Relation}); after each step it is checked again.
 */
final class Judged {

    private static final int MOST_CHANGES = 4;
    private static final int STEPS = 6;
    private static final double SAME_MARGIN = 1e-6;

    /** What the check says of one rule and one element, all such outcomes together: the worst verdict, the least margin. */
    record Said(Verdict verdict, int outcomes, int measured, double margin) {

        static Said of(Outcome outcome) {
            return new Said(outcome.verdict(), 1, outcome.margin().isPresent() ? 1 : 0, outcome.margin().orElse(Double.POSITIVE_INFINITY));
        }

        Said and(Said other) {
            return new Said(verdict.compareTo(other.verdict) < 0 ? verdict : other.verdict, outcomes + other.outcomes,
                    measured + other.measured, Math.min(margin, other.margin));
        }

        boolean isOpen() {
            return verdict == Verdict.NOT_MET || verdict == Verdict.TO_CLEAR_UP;
        }

        boolean isAsFullAs(Said other) {
            return outcomes == other.outcomes && measured == other.measured;
        }
    }

    private Judged() {
    }

    /** Returns how many whole projects were checked, none where the changed one is refused when it is read. */
    static int judge(byte[] whole, String name, Breaker breaker, Path failures) throws ProjectFileException, IOException {
        Project sound = ProjectFile.load(new ByteArrayInputStream(whole), name);
        for (int left = breaker.upTo(MOST_CHANGES); left > 0; left--) {
            Entries.change(sound, breaker);
        }
        byte[] bytes = ProjectFile.bytes(sound);
        Project project;
        Map<String, Said> before;
        try {
            project = ProjectFile.load(new ByteArrayInputStream(bytes), name);
            before = said(Checks.run(project, Optional.empty()));
        } catch (ProjectFileException | IllegalArgumentException e) {
            return 0;
        }
        if (project.getAerodrome() == null) {
            return 1;
        }
        if (!Arrays.equals(bytes, ProjectFile.bytes(project))) {
            throw new IllegalStateException("is not what was saved when it is read: " + name);
        }
        int checked = 1;
        for (int left = STEPS; left > 0; left--) {
            Relation relation = breaker.one(List.of(Relation.values()));
            Optional<String> change = relation.change(project, breaker);
            if (change.isPresent()) {
                Map<String, Said> after;
                try {
                    after = said(Checks.run(project, Optional.empty()));
                } catch (IllegalArgumentException e) {
                    return checked;
                }
                checked++;
                Optional<String> fault = relation.fault(before, after, change.get());
                if (fault.isPresent()) {
                    Path kept = failures.resolve(relation + "-" + Integer.toHexString(Arrays.hashCode(bytes)) + ".slopewright");
                    Files.write(kept, ProjectFile.bytes(project));
                    throw new IllegalStateException(relation + " " + fault.get() + " " + kept.getFileName());
                }
                before = after;
            }
        }
        return checked;
    }

    private static Map<String, Said> said(CheckResult result) {
        Map<String, Said> said = new LinkedHashMap<>();
        for (Outcome outcome : result.outcomes()) {
            said.merge(outcome.rule() + " " + outcome.elementId(), Said.of(outcome), Said::and);
        }
        return said;
    }

    /** Nothing that was not met or to clear up is met, or has nothing to say, and no margin grew. */
    static Optional<String> noBetter(Map<String, Said> before, Map<String, Said> after, Predicate<String> rules, String change) {
        for (Map.Entry<String, Said> entry : before.entrySet()) {
            String rule = entry.getKey().substring(0, entry.getKey().indexOf(' '));
            Said was = entry.getValue();
            Said is = after.get(entry.getKey());
            if (!rules.test(rule)) {
                continue;
            }
            if (was.isOpen() && (is == null || !is.isOpen())) {
                return Optional.of(rule + " from " + was.verdict() + " to " + (is == null ? "nothing" : is.verdict()) + ": " + change
                        + ", " + entry.getKey());
            }
            if (is != null && is.isAsFullAs(was) && is.margin() > was.margin() + SAME_MARGIN * Math.max(1, Math.abs(was.margin()))) {
                return Optional.of(rule + " has more margin: " + change + ", " + entry.getKey() + " " + was.margin() + " to "
                        + is.margin());
            }
        }
        return Optional.empty();
    }

    /** Every verdict and every margin is what it was. */
    static Optional<String> same(Map<String, Said> before, Map<String, Said> after, Predicate<String> rules, String change) {
        for (Map.Entry<String, Said> entry : before.entrySet()) {
            String rule = entry.getKey().substring(0, entry.getKey().indexOf(' '));
            Said was = entry.getValue();
            Said is = after.get(entry.getKey());
            if (!rules.test(rule)) {
                continue;
            }
            if (is == null || !is.isAsFullAs(was)
                    || is.verdict() != was.verdict() && Math.abs(was.margin()) > SAME_MARGIN && Math.abs(is.margin()) > SAME_MARGIN
                    || Math.abs(is.margin() - was.margin()) > SAME_MARGIN * Math.max(1, Math.abs(was.margin()))) {
                return Optional.of(rule + " is not the same: " + change + ", " + entry.getKey() + " " + was + " " + is);
            }
        }
        return Optional.empty();
    }

    /** Nothing that was not met or to clear up is met, unless something else became worse. */
    static Optional<String> noYes(Map<String, Said> before, Map<String, Said> after, String change) {
        String yes = "";
        for (Map.Entry<String, Said> entry : before.entrySet()) {
            Said was = entry.getValue();
            Said is = after.get(entry.getKey());
            if (is == null ? was.verdict() == Verdict.MET : is.verdict().compareTo(was.verdict()) < 0
                    || was.verdict() == Verdict.MET && is.verdict() != Verdict.MET) {
                return Optional.empty();
            }
            if (was.isOpen() && is != null && is.verdict() == Verdict.MET) {
                yes = entry.getKey() + " from " + was.verdict();
            }
        }
        boolean worse = after.entrySet().stream().anyMatch(entry -> entry.getValue().isOpen() && !before.containsKey(entry.getKey()));
        return yes.isEmpty() || worse ? Optional.empty() : Optional.of(change + " lets " + yes + " be met");
    }
}
