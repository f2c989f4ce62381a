package slopewright.survival;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Starts another process that writes, kills it or lets a call of it fail, and looks at what is there. */
public final class Survival {

    private static final long SEED = 20260601;
    private static final int MOST_DELAY_NS = 4_000_000;
    private static final int MOST_ROUNDS_A_HIT = 30;
    private static final double LEAST_HIT = 0.9;
    private static final String CALLS = "write,pwrite64,writev,pwritev,fsync,fdatasync,rename,renameat,renameat2,link,linkat,unlink,"
            + "unlinkat,ftruncate,chmod,fchmod,fchmodat,chown,fchown,openat";

    private static final String KILL = "signal=KILL";
    private static final List<String> ERRORS = List.of("error=EIO", "error=ENOSPC");
    private static final Pattern CALL = Pattern.compile("(\\d+) +(\\w+)\\(.*");

    private final Path demo;
    private final Path work;
    private final Random random = new Random(SEED);
    private int damages;

    private Survival(Path demo, Path work) {
        this.demo = demo;
        this.work = work;
    }

    /** Words: folder of the demonstration, folder to work in, and how many hits of each kind, or {@code calls}, or {@code errors}; kinds, all where none is named. */
    public static void main(String[] words) throws Exception {
        Survival survival = new Survival(Path.of(words[0]), Path.of(words[1]));
        List<String> faults = "calls".equals(words[2]) ? List.of(KILL) : "errors".equals(words[2]) ? ERRORS : List.of();
        List<String> wanted = Arrays.asList(words).subList(3, words.length);
        for (Writing writing : Writing.values()) {
            if (!wanted.isEmpty() && !wanted.contains(writing.name().toLowerCase(Locale.ROOT))) {
                continue;
            }
            if (faults.isEmpty()) {
                survival.hits(writing, Integer.parseInt(words[2]));
            } else {
                survival.everyCall(writing, faults);
            }
        }
        System.out.println(survival.damages == 0 ? "nothing was lost" : survival.damages + " times something was lost");
        System.exit(survival.damages == 0 ? 0 : 1);
    }

    /** Both contents of each file, as they are where nobody is killed. */
    private Map<String, List<byte[]>> contents(Writing writing, Writing.Source source) throws Exception {
        Map<String, List<byte[]>> contents = new TreeMap<>();
        for (int turn = 0; turn < 2; turn++) {
            Path folder = Files.createDirectories(work.resolve(writing + "-" + turn));
            writing.write(source, folder, turn);
            for (Path file : files(folder)) {
                contents.computeIfAbsent(file.getFileName().toString(), name -> new ArrayList<>()).add(Files.readAllBytes(file));
            }
        }
        return contents;
    }

    private Path fresh(Writing writing, Writing.Source source) throws Exception {
        Path folder = work.resolve(String.valueOf(writing));
        for (Path file : Files.isDirectory(folder) ? files(folder) : List.<Path>of()) {
            Files.delete(file);
        }
        Files.createDirectories(folder);
        writing.write(source, folder, 0);
        return folder;
    }

    private void hits(Writing writing, int wanted) throws Exception {
        Writing.Source source = Writing.Source.of(demo, writing);
        Map<String, List<byte[]>> contents = contents(writing, source);
        Path folder = fresh(writing, source);
        int rounds = 0;
        int inside = 0;
        while (inside < wanted && rounds < wanted * MOST_ROUNDS_A_HIT) {
            rounds++;
            Process process = start(List.of(), writing, folder, Long.MAX_VALUE);
            awaitTemporary(process, folder);
            LockSupport.parkNanos(random.nextInt(MOST_DELAY_NS));
            process.destroyForcibly().waitFor();
            inside += hasTemporary(folder) ? 1 : 0;
            verify(writing, source, folder, contents, "round " + rounds);
        }
        System.out.printf(Locale.ROOT, "%-9s %5d kills, %5d of them inside a write%n", writing, rounds, inside);
        if (inside < wanted) {
            damages++;
            System.out.println(writing + ": too few kills hit the inside of a write");
        }
    }

    /**
     * One call of the system: which, the how manieth of its kind in the thread that makes it, and whether it opens something to read. That a
     * project cannot be read again is said in what is written, which is then another content and whole.
     */
    private record Call(String name, int number, boolean isReading) {
    }

    /**
     * At one call after the other the process is killed, or the call answers with an error, as a drive does that is pulled out or full.
     * What then says that it was written must be there; else each file is what it was or what it was to be.
     */
    private void everyCall(Writing writing, List<String> faults) throws Exception {
        Writing.Source source = Writing.Source.of(demo, writing);
        Map<String, List<byte[]>> contents = contents(writing, source);
        Path folder = fresh(writing, source);
        Path trace = work.resolve("trace");
        Set<Call> calls = calls(writing, folder, trace);
        for (String fault : faults) {
            int hit = 0;
            int inside = 0;
            boolean ends = KILL.equals(fault);
            List<Call> wanted = calls.stream().filter(call -> ends || !call.isReading()).toList();
            for (Call call : wanted) {
                List<String> strace = List.of("strace", "-f", "-qq", "-o", trace.toString(), "-e", "trace=" + CALLS, "-e", "signal=none",
                        "-e", "inject=" + call.name() + ":" + fault + ":when=" + call.number());
                int code = start(strace, writing, folder, 2).waitFor();
                String when = fault + " at " + call.name() + " " + call.number();
                hit += ends ? code == 0 ? 0 : 1 : read(trace).contains("(INJECTED)") ? 1 : 0;
                inside += hasTemporary(folder) ? 1 : 0;
                if (!ends && hasTemporary(folder) && !call.name().startsWith("unlink")) {
                    damage(writing, when, "is left: " + files(folder));
                }
                if (code == 0 && !contents.entrySet().stream().allMatch(file -> holds(folder.resolve(file.getKey()),
                        file.getValue().get(1)))) {
                    damage(writing, when, "was said to be written and is not what it was to be");
                }
                verify(writing, source, folder, contents, when);
            }
            System.out.printf(Locale.ROOT, "%-9s %-12s at each of %4d calls, %4d hit, %4d with something half written%n", writing, fault,
                    wanted.size(), hit, inside);
            if (hit < wanted.size() * LEAST_HIT) {
                damage(writing, fault, "too few calls were hit");
            }
        }
    }

    /** The calls of the threads that write, from the first temporary file on; counted by kind and thread, as strace counts them. */
    private Set<Call> calls(Writing writing, Path folder, Path trace) throws Exception {
        start(List.of("strace", "-f", "-qq", "-o", trace.toString(), "-e", "signal=none", "-e", "trace=" + CALLS), writing, folder, 2)
                .waitFor();
        Map<String, Integer> counts = new TreeMap<>();
        Set<String> writers = new HashSet<>();
        Set<Call> calls = new LinkedHashSet<>();
        for (String line : read(trace).split("\n")) {
            Matcher call = CALL.matcher(line);
            if (call.matches()) {
                int number = counts.merge(call.group(1) + " " + call.group(2), 1, Integer::sum);
                if (line.contains("openat(") && line.contains(".new\"")) {
                    writers.add(call.group(1));
                }
                if (writers.contains(call.group(1))) {
                    calls.add(new Call(call.group(2), number, line.contains("openat(") && !line.contains("O_CREAT")));
                }
            }
        }
        if (calls.isEmpty()) {
            throw new IOException("nothing was written");
        }
        return calls;
    }

    private static String read(Path trace) throws IOException {
        return Files.readString(trace, StandardCharsets.ISO_8859_1);
    }

    private static boolean holds(Path file, byte[] content) {
        try {
            return Arrays.equals(Files.readAllBytes(file), content);
        } catch (IOException e) {
            return false;
        }
    }

    private Process start(List<String> before, Writing writing, Path folder, long times) throws IOException {
        List<String> words = new ArrayList<>(before);
        words.addAll(List.of("java", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-XX:-UsePerfData",
                "-Djava.awt.headless=true", "-cp",
                System.getProperty("java.class.path"), "slopewright.survival.Writing", writing.name(), demo.toString(), folder.toString(),
                String.valueOf(times)));
        return new ProcessBuilder(words).redirectError(before.isEmpty() ? ProcessBuilder.Redirect.INHERIT
                : ProcessBuilder.Redirect.DISCARD).start();
    }

    private static void awaitTemporary(Process process, Path folder) throws IOException {
        BufferedReader said = new BufferedReader(new InputStreamReader(process.getInputStream()));
        if (!"ready".equals(said.readLine())) {
            throw new IOException("it did not start");
        }
        while (process.isAlive() && !hasTemporary(folder)) {
            Thread.onSpinWait();
        }
    }

    private static boolean isTemporary(String name) {
        return name.endsWith(".new") || name.endsWith(".kept");
    }

    private static boolean hasTemporary(Path folder) {
        String[] names = folder.toFile().list();
        return names != null && Arrays.stream(names).anyMatch(Survival::isTemporary);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted(Comparator.naturalOrder()).toList();
        }
    }

    private void verify(Writing writing, Writing.Source source, Path folder, Map<String, List<byte[]>> contents, String when)
            throws Exception {
        List<String> names = files(folder).stream().map(file -> file.getFileName().toString()).filter(name -> !isTemporary(name)).toList();
        if (!names.containsAll(contents.keySet())) {
            damage(writing, when, "is gone: " + contents.keySet() + " were there, " + names + " are");
        }
        for (String name : names) {
            byte[] found = Files.readAllBytes(folder.resolve(name));
            List<byte[]> whole = contents.get(name.endsWith(".previous") ? name.substring(0, name.length() - ".previous".length()) : name);
            if (whole == null || whole.stream().noneMatch(content -> Arrays.equals(content, found))) {
                damage(writing, when, "is neither what it was nor what it was to be: " + name);
            }
        }
        writing.write(source, folder, 0);
        if (hasTemporary(folder)) {
            damage(writing, when, "is left: " + files(folder));
            for (Path file : files(folder)) {
                if (isTemporary(file.getFileName().toString())) {
                    Files.delete(file);
                }
            }
        }
    }

    private void damage(Writing writing, String when, String what) {
        damages++;
        System.out.println(writing + ", " + when + ": " + what);
    }
}
