package slopewright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

import slopewright.checks.Checks;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.siting.site.SurveyPoints;

/** How much memory the check of a project with a block of so many points takes at its peak; made in one run, checked in another. */
public final class MemoryBench {

    private static final double MEGABYTE = 1 << 20;

    private MemoryBench() {
    }

    /** Runs with the file to make or to check, and to make it with a project to start from and a number of points. */
    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[0]);
        if (args.length > 1) {
            make(file, ProjectFile.load(Path.of(args[1])), Integer.parseInt(args[2]));
            return;
        }
        long begun = System.nanoTime();
        int outcomes = Checks.run(ProjectFile.load(file), Optional.empty()).outcomes().size();
        double seconds = (System.nanoTime() - begun) / 1e9;
        double heap = ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage).mapToLong(usage -> usage.getUsed()).sum() / MEGABYTE;
        System.out.printf(Locale.ROOT, "%,d points: %d outcomes in %.2f s, cold; peak of the heap %.0f MiB, of the process %.0f MiB%n",
                ProjectFile.load(file).getSurveyBlocks().stream().mapToInt(SurveyBlock::getPointCount).max().orElse(0), outcomes, seconds, heap,
                residentMiB());
    }

    private static double residentMiB() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream().filter(line -> line.startsWith("VmHWM"))
                .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024).findFirst().orElse(Double.NaN);
    }

    private static void make(Path file, Project project, int count) throws Exception {
        SplittableRandom random = new SplittableRandom(20261130);
        byte[] bytes = new SurveyPoints(false, random.doubles(count, 47.2, 47.4).toArray(), random.doubles(count, -12.05, -11.75).toArray(),
                random.doubles(count, 60, 80).toArray(), List.of()).bytes();
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName("many");
        block.setKind("obstacles");
        block.setPath("many-" + count + "." + SurveyPoints.EXTENSION);
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(count);
        block.setSource("bench");
        block.setDate("2026-06-01");
        block.setHorizontalAccuracyM(1.0);
        block.setVerticalAccuracyM(0.5);
        project.getSurveyBlocks().clear();
        project.getSurveyBlocks().add(block);
        Files.write(file.resolveSibling(block.getPath()), bytes);
        ProjectFile.save(project, file);
    }
}
