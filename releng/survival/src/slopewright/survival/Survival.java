package slopewright.survival;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/** Starts another process that writes, kills it, and looks at what is there. */
public final class Survival {

    private static final long SEED = 20260601;
    private static final int MOST_DELAY_NS = 4_000_000;
    private static final int MOST_ROUNDS_A_HIT = 30;
    private static final String CALLS = "write,pwrite64,writev,pwritev,fsync,fdatasync,rename,renameat,renameat2,link,linkat,unlink,"
            + "unlinkat,ftruncate,chmod,fchmod,fchmodat,chown,fchown,openat";

    private final Path demo;
    private final Path work;
    private final Random random = new Random(SEED);
    private int damages;

    private Survival(Path demo, Path work) {
        this.demo = demo;
        this.work = work;
    }

    /** Words: folder of the demonstration, folder to work in, and how many hits of each kind, or {@code calls}. */
    public static void main(String[] words) throws Exception {
        Survival survival = new Survival(Path.of(words[0]), Path.of(words[1]));
        for (Writing writing : Writing.values()) {
            if ("calls".equals(words[2])) {
                survival.everyCall(writing);
            } else {
                survival.hits(writing, Integer.parseInt(words[2]));
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

    private void everyCall(Writing writing) throws Exception {
        Writing.Source source = Writing.Source.of(demo, writing);
        Map<String, List<byte[]>> contents = contents(writing, source);
        Path folder = fresh(writing, source);
        int inside = 0;
        int number = firstCall(writing, folder);
        int begun = number;
        while (true) {
            List<String> strace = List.of("strace", "-f", "-qq", "-o", "/dev/null", "-e", "trace=" + CALLS, "-e", "signal=none", "-e",
                    "inject=" + CALLS + ":signal=KILL:when=" + number);
            Process process = start(strace, writing, folder, 2);
            if (process.waitFor() == 0) {
                break;
            }
            inside += hasTemporary(folder) ? 1 : 0;
            verify(writing, source, folder, contents, "call " + number);
            number++;
        }
        System.out.printf(Locale.ROOT, "%-9s killed at each of %4d calls, %4d of them inside a write%n", writing, number - begun, inside);
    }

    /** The number of the first call of the thread that writes after which a temporary file is there, less a margin. */
    private int firstCall(Writing writing, Path folder) throws Exception {
        Path trace = work.resolve("trace");
        List<String> strace = List.of("strace", "-f", "-qq", "-o", trace.toString(), "-e", "signal=none", "-e", "trace=" + CALLS);
        start(strace, writing, folder, 1).waitFor();
        Map<String, Integer> calls = new TreeMap<>();
        for (String line : Files.readAllLines(trace, java.nio.charset.StandardCharsets.ISO_8859_1)) {
            if (line.contains("resumed>")) {
                continue;
            }
            int count = calls.merge(line.substring(0, line.indexOf(' ')), 1, Integer::sum);
            if (line.contains("openat(") && line.contains(".new\"")) {
                return count;
            }
        }
        throw new IOException("nothing was written");
    }

    private Process start(List<String> before, Writing writing, Path folder, long times) throws IOException {
        List<String> words = new ArrayList<>(before);
        words.addAll(List.of("java", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-Djava.awt.headless=true", "-cp",
                System.getProperty("java.class.path"), "slopewright.survival.Writing", writing.name(), demo.toString(), folder.toString(),
                String.valueOf(times)));
        return new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT).start();
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
