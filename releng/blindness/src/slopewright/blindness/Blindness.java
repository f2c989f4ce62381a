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
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.blindness.Judge.Reason;
import slopewright.checks.Outcome;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;

/**
 * Makes one entry of a project wrong at a time, checks it, and mends it again. What is not found needs a reason that the results prove; see
 * {@link Judge.Reason}. Only a project of which everything is met is counted.
 */
public final class Blindness {
    private static final double PERCENT = 100;
    private static final int SHARE_OF_READ_BACKS = 5;

    private final Map<Corruption.Way, Map<Reason, Integer>> counts = new EnumMap<>(Corruption.Way.class);
    private final Map<String, Integer> blindFeatures = new TreeMap<>();
    private int blind;
    private int blindByRules;
    private int all;
    private int readBacks;
    private int readBacksUnseen;

    private Blindness() {
    }

    /**
     * Runs over project files.
     *
     * @param args {@code --sample N} for so many corruptions of each file, {@code --reasons} to list every corruption with its reason,
     *             {@code --most-percent P} for the share without a reason that is let pass, {@code --most-by-rules P} for that which only
     *             the read-backs find, then the files
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
        int byRules = words.indexOf("--most-by-rules");
        double mostByRules = PERCENT;
        if (byRules >= 0) {
            mostByRules = Double.parseDouble(words.remove(byRules + 1));
            words.remove(byRules);
        }
        boolean sound = true;
        for (String file : words) {
            Blindness blindness = new Blindness();
            sound &= blindness.run(Path.of(file), sample, listed);
            blindness.print();
            sound &= blindness.blind * PERCENT <= mostPercent * blindness.all && blindness.readBacksUnseen == 0
                    && blindness.blindByRules * PERCENT <= mostByRules * blindness.all;
        }
        System.exit(sound ? 0 : 1);
    }

    private boolean run(Path file, int sample, boolean listed) throws Exception {
        Project project = ProjectFile.load(file);
        Results before = Results.of(project);
        List<Outcome> open = Stream.concat(before.open().stream(), before.notReadBack().stream()).toList();
        if (!open.isEmpty()) {
            System.out.println(file + ": is not counted, for " + open.size() + " outcomes are open before anything is corrupted:");
            open.stream().limit(10).forEach(outcome -> System.out.println("  " + outcome.rule() + " " + outcome.elementId() + " "
                    + outcome.explanation().english()));
            return false;
        }
        Map<Boolean, List<Corruption>> parts = Corruptions.of(project).stream()
                .collect(Collectors.partitioningBy(Corruption::isOfReadBack));
        List<Corruption> all = new ArrayList<>(some(parts.get(false), sample));
        all.addAll(some(parts.get(true), sample / SHARE_OF_READ_BACKS));
        Judge judge = new Judge(project, before);
        Map<String, List<Corruption>> byEntry = new HashMap<>();
        for (Corruption corruption : Corruptions.of(project)) {
            byEntry.computeIfAbsent(corruption.entry(), entry -> new ArrayList<>()).add(corruption);
            if (corruption.way() != Corruption.Way.ELEMENT_REMOVED) {
                byEntry.computeIfAbsent(corruption.elementId(), entry -> new ArrayList<>()).add(corruption);
            }
        }
        for (Corruption corruption : all) {
            Judge.Judged judged = judge.judge(corruption, byEntry.get(corruption.entry()));
            boolean isBlind = isBlind(judged.all());
            if (corruption.isOfReadBack()) {
                readBacks++;
                readBacksUnseen += isBlind ? 1 : 0;
            } else {
                counts.computeIfAbsent(corruption.way(), way -> new EnumMap<>(Reason.class)).merge(judged.all(), 1, Integer::sum);
                blind += isBlind ? 1 : 0;
            }
            if (isBlind(judged.byRules()) && !corruption.isOfReadBack()) {
                blindByRules++;
                blindFeatures.merge(corruption.feature(), 1, Integer::sum);
            }
            if (listed || isBlind || isBlind(judged.byRules()) && !corruption.isOfReadBack()) {
                System.out.println(word(judged.all()) + " " + corruption.text());
            }
        }
        if (!Results.of(project).outcomes().equals(before.outcomes())) {
            throw new IllegalStateException(file + ": the project is not what it was after everything was mended");
        }
        System.out.println(file + ": " + all.size() + " corruptions");
        return true;
    }

    private static List<Corruption> some(List<Corruption> corruptions, int most) {
        if (most >= corruptions.size()) {
            return corruptions;
        }
        List<Corruption> shuffled = new ArrayList<>(corruptions);
        Collections.shuffle(shuffled, new Random(20260601));
        return shuffled.subList(0, most);
    }

    private static boolean isBlind(Reason reason) {
        return reason == Reason.NONE || reason == Reason.UNNAMED;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void print() {
        blindFeatures.entrySet().stream().sorted((a, b) -> b.getValue() - a.getValue())
                .forEach(entry -> System.out.printf("%5d %s%n", entry.getValue(), entry.getKey()));
        System.out.printf("%-16s", "");
        for (Reason reason : Reason.values()) {
            System.out.printf("%20s", word(reason));
        }
        System.out.println();
        for (Map.Entry<Corruption.Way, Map<Reason, Integer>> row : counts.entrySet()) {
            System.out.printf("%-16s", word(row.getKey()));
            for (Reason reason : Reason.values()) {
                int count = row.getValue().getOrDefault(reason, 0);
                all += count;
                System.out.printf("%20d", count);
            }
            System.out.println();
        }
        System.out.printf(Locale.ROOT, "%d corruptions of entries: %d (%.2f %%) without a reason, %d (%.2f %%) were nothing read back%n",
                all, blind, blind * PERCENT / Math.max(1, all), blindByRules, blindByRules * PERCENT / Math.max(1, all));
        System.out.printf("%d corruptions of read-backs: %d not found%n", readBacks, readBacksUnseen);
    }
}
