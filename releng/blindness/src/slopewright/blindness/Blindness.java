package slopewright.blindness;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

import slopewright.blindness.Judge.Reason;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;

/**
 * Makes one entry of a project wrong at a time, checks it, and mends it again. What is not found needs a reason that the results prove; see
 * {@link Judge.Reason}. Only a project of which everything is met is counted.
 */
public final class Blindness {
    private static final double PERCENT = 100;

    private final Map<Corruption.Way, Map<Reason, Integer>> counts = new EnumMap<>(Corruption.Way.class);
    private final Map<String, Integer> blindFeatures = new TreeMap<>();
    private int blind;
    private int all;

    private Blindness() {
    }

    /**
     * Runs over project files.
     *
     * @param args {@code --sample N} for so many corruptions of each file, {@code --reasons} to list every corruption with its reason,
     *             {@code --most-percent P} for the share without a reason that is let pass, then the files
     */
    public static void main(String[] args) throws Exception {
        List<String> words = new ArrayList<>(List.of(args));
        boolean listed = words.remove("--reasons");
        int at = words.indexOf("--sample");
        int sample = Integer.MAX_VALUE;
        if (at >= 0) {
            sample = Integer.parseInt(words.remove(at + 1));
            words.remove(at);
        }
        int atMost = words.indexOf("--most-percent");
        double mostPercent = 0;
        if (atMost >= 0) {
            mostPercent = Double.parseDouble(words.remove(atMost + 1));
            words.remove(atMost);
        }
        boolean sound = true;
        for (String file : words) {
            Blindness blindness = new Blindness();
            sound &= blindness.run(Path.of(file), sample, listed);
            blindness.print();
            sound &= blindness.blind * PERCENT <= mostPercent * blindness.all;
        }
        System.exit(sound ? 0 : 1);
    }

    private boolean run(Path file, int sample, boolean listed) throws Exception {
        Project project = ProjectFile.load(file);
        Results before = Results.of(project);
        if (!before.open().isEmpty()) {
            System.out.println(file + ": is not counted, for " + before.open().size() + " outcomes are open before anything is corrupted:");
            before.open().stream().limit(10).forEach(outcome -> System.out.println("  " + outcome.rule() + " " + outcome.elementId() + " "
                    + outcome.explanation().english()));
            return false;
        }
        List<Corruption> all = new ArrayList<>(Corruptions.of(project));
        if (sample < all.size()) {
            Collections.shuffle(all, new Random(20260601));
            all = all.subList(0, sample);
        }
        Judge judge = new Judge(project, before);
        Map<String, List<Corruption>> byEntry = new HashMap<>();
        for (Corruption corruption : Corruptions.of(project)) {
            byEntry.computeIfAbsent(corruption.entry(), entry -> new ArrayList<>()).add(corruption);
            if (corruption.way() != Corruption.Way.ELEMENT_REMOVED) {
                byEntry.computeIfAbsent(corruption.elementId(), entry -> new ArrayList<>()).add(corruption);
            }
        }
        for (Corruption corruption : all) {
            Reason reason = judge.judge(corruption, byEntry.get(corruption.entry()));
            counts.computeIfAbsent(corruption.way(), way -> new EnumMap<>(Reason.class)).merge(reason, 1, Integer::sum);
            boolean isBlind = reason == Reason.NONE || reason == Reason.UNNAMED;
            if (isBlind) {
                blind++;
                blindFeatures.merge(corruption.feature(), 1, Integer::sum);
            }
            if (listed || isBlind) {
                System.out.println(word(reason) + " " + corruption.text());
            }
        }
        if (!Results.of(project).outcomes().equals(before.outcomes())) {
            throw new IllegalStateException(file + ": the project is not what it was after everything was mended");
        }
        System.out.println(file + ": " + all.size() + " corruptions");
        return true;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void print() {
        blindFeatures.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue())
                .forEach(entry -> System.out.printf("%5d %s%n", entry.getValue(), entry.getKey()));
        System.out.printf("%-16s", "");
        for (Reason reason : Reason.values()) {
            System.out.printf("%16s", word(reason));
        }
        System.out.println();
        for (Map.Entry<Corruption.Way, Map<Reason, Integer>> row : counts.entrySet()) {
            System.out.printf("%-16s", word(row.getKey()));
            for (Reason reason : Reason.values()) {
                int count = row.getValue().getOrDefault(reason, 0);
                all += count;
                System.out.printf("%16d", count);
            }
            System.out.println();
        }
        System.out.printf("%d corruptions, %d without a reason%n", all, blind);
    }
}
