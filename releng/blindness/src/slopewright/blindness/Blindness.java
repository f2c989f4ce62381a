package slopewright.blindness;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EObject;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.evaluation.KeptForTheRecord;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;

/**
 * Makes one entry of a project wrong at a time, checks it, and mends it again. A corruption is found where an outcome that is not met or to
 * clear up, which was not there before, names the corrupted element. What is not found needs a reason: the entry is kept for the record
 * alone and nothing moves; it means the same; or, for a small change, a listed result moves and is rightly still met.
 */
public final class Blindness {
    private static final int MOST_LISTED = 400;

    private enum Reason {
        FOUND, FOR_THE_RECORD, MEANS_THE_SAME, LISTED_AND_MET, NONE
    }

    private final Map<Corruption.Way, Map<Reason, Integer>> counts = new EnumMap<>(Corruption.Way.class);
    private final Map<String, Integer> blindFeatures = new TreeMap<>();
    private final List<String> blind = new ArrayList<>();

    private Blindness() {
    }

    /**
     * Runs over project files.
     *
     * @param args {@code --sample N} for so many corruptions of each file, then the files
     */
    public static void main(String[] args) throws Exception {
        int sample = args.length > 1 && args[0].equals("--sample") ? Integer.parseInt(args[1]) : Integer.MAX_VALUE;
        Blindness blindness = new Blindness();
        boolean sound = true;
        for (String file : List.of(args).subList(sample == Integer.MAX_VALUE ? 0 : 2, args.length)) {
            sound &= blindness.run(Path.of(file), sample);
        }
        blindness.print();
        System.exit(sound && blindness.blind.isEmpty() ? 0 : 1);
    }

    private boolean run(Path file, int sample) throws Exception {
        Project project = ProjectFile.load(file);
        List<Outcome> before = Checks.run(project, Optional.empty()).outcomes();
        List<Outcome> open = before.stream().filter(Blindness::isOpen).toList();
        if (!open.isEmpty()) {
            System.out.println(file + ": is not counted, for " + open.size() + " outcomes are open before anything is corrupted:");
            open.stream().limit(10).forEach(outcome -> System.out.println("  " + outcome.rule() + " " + outcome.elementId() + " "
                    + outcome.explanation().english()));
            return false;
        }
        List<Corruption> all = new ArrayList<>(Corruptions.of(project));
        if (sample < all.size()) {
            Collections.shuffle(all, new Random(20260601));
            all = all.subList(0, sample);
        }
        for (Corruption corruption : all) {
            Set<String> named = named(project, corruption);
            corruption.carryOut().run();
            try {
                note(corruption, judge(project, corruption, named, before));
            } finally {
                corruption.undo().run();
            }
        }
        List<Outcome> after = Checks.run(project, Optional.empty()).outcomes();
        if (!after.equals(before)) {
            throw new IllegalStateException(file + ": the project is not what it was after everything was mended");
        }
        System.out.println(file + ": " + all.size() + " corruptions");
        return true;
    }

    private static boolean isOpen(Outcome outcome) {
        return outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP;
    }

    /** The element, what holds it and what it holds. */
    private static Set<String> named(Project project, Corruption corruption) {
        Set<String> ids = new HashSet<>();
        Ids.find(project, corruption.elementId()).ifPresent(element -> {
            for (EObject holder = element; holder != null; holder = holder.eContainer()) {
                ids.add(((Identified) holder).getId());
            }
            Ids.elements(element).forEach(part -> ids.add(part.getId()));
        });
        return ids;
    }

    private static Reason judge(Project project, Corruption corruption, Set<String> named, List<Outcome> before) {
        List<Outcome> after;
        try {
            after = Checks.run(project, Optional.empty()).outcomes();
        } catch (IllegalArgumentException e) {
            return Reason.FOUND;
        }
        boolean found = after.stream().filter(Blindness::isOpen).anyMatch(outcome -> named.contains(outcome.elementId())
                || outcome.explanation().english().contains(corruption.label()));
        if (found) {
            return Reason.FOUND;
        }
        boolean unmoved = after.equals(before);
        if (unmoved && isForTheRecord(corruption)) {
            return Reason.FOR_THE_RECORD;
        }
        if (unmoved && meansTheSame(corruption)) {
            return Reason.MEANS_THE_SAME;
        }
        return !unmoved && corruption.way().mayMove() ? Reason.LISTED_AND_MET : Reason.NONE;
    }

    private static boolean isForTheRecord(Corruption corruption) {
        return KeptForTheRecord.features().contains(corruption.feature());
    }

    /** A zero that is taken out, or a no that is taken out, says what nothing says. */
    private static boolean meansTheSame(Corruption corruption) {
        return corruption.way() == Corruption.Way.REMOVED && Set.of("0.0", "0", "false").contains(corruption.from());
    }

    private void note(Corruption corruption, Reason reason) {
        counts.computeIfAbsent(corruption.way(), way -> new EnumMap<>(Reason.class)).merge(reason, 1, Integer::sum);
        if (reason == Reason.NONE) {
            blind.add(corruption.text());
            blindFeatures.merge(corruption.feature(), 1, Integer::sum);
        }
    }

    private void print() {
        blind.stream().limit(MOST_LISTED).forEach(line -> System.out.println("NOT FOUND " + line));
        System.out.printf("%-16s", "");
        for (Reason reason : Reason.values()) {
            System.out.printf("%16s", reason.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        }
        System.out.println();
        int all = 0;
        for (Map.Entry<Corruption.Way, Map<Reason, Integer>> row : counts.entrySet()) {
            System.out.printf("%-16s", row.getKey().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            for (Reason reason : Reason.values()) {
                int count = row.getValue().getOrDefault(reason, 0);
                all += count;
                System.out.printf("%16d", count);
            }
            System.out.println();
        }
        blindFeatures.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue()).limit(60)
                .forEach(entry -> System.out.printf("%5d %s%n", entry.getValue(), entry.getKey()));
        System.out.printf("%d corruptions, %d without a reason%n", all, blind.size());
    }
}
