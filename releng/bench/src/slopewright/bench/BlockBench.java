package slopewright.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.PointOrder;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;

/**
 * Survey blocks against one obstacle surface as a check does it: read with their hash, put together in tiles, brought into the frame and
 * compared, the accuracy of the survey on the safe side; and a plain read of the same bytes, in memory and from the file. Each by the clock
 * and by what the processors spent on it together.
 */
public final class BlockBench {

    private static final int MOST = 20_000_000;
    private static final int TIMES = 5;
    private static final double HORIZONTAL_M = 0.4;
    private static final double VERTICAL_M = 0.25;

    private BlockBench() {
    }

    /** Runs with a project whose first aid has an obstacle surface, a scratch folder, and a number of points. */
    public static void main(String[] args) throws Exception {
        Project project = ProjectFile.load(Path.of(args[0]));
        AidEvaluation aid = Projects.aids(project).stream().map(AidEvaluation::of).filter(found -> found.obstacles().value().isPresent())
                .findFirst().orElseThrow();
        SiteFrame frame = aid.frame().orThrow();
        ProtectionSurface surface = aid.obstacles().orThrow().surface();
        List<SurveyPoints> blocks = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        List<String> hashes = new ArrayList<>();
        for (int left = Integer.parseInt(args[2]); left > 0; left -= MOST) {
            SurveyPoints block = points(Math.min(MOST, left), blocks.size());
            byte[] bytes = block.bytes();
            blocks.add(block);
            files.add(Files.write(Path.of(args[1]).resolve("block-" + files.size() + ".swpoints"), bytes));
            hashes.add(SurveyPoints.sha256(bytes));
        }
        Took read = Took.best(TIMES, () -> {
            for (Path file : files) {
                PlainRead.file(file);
            }
        });
        Took loaded = Took.best(TIMES, () -> IntStream.range(0, files.size()).map(i -> SurveyPoints.read(files.get(i), hashes.get(i))
                .count()).sum());
        double[] sum = new double[1];
        Took bus = Took.best(TIMES, () -> sum[0] = blocks.stream().mapToDouble(BlockBench::sum).sum());
        List<PointOrder> orders = new ArrayList<>();
        Took ordered = Took.best(TIMES, () -> {
            orders.clear();
            blocks.forEach(block -> orders.add(new PointOrder(block)));
        });
        int[] inside = new int[1];
        Took compared = Took.best(TIMES, () -> inside[0] = orders.stream().mapToInt(order -> compare(order, frame, surface)).sum());
        System.out.printf("plain read of the files %s%nread with their hash %s%nplain read of memory %s%nput together, once for all frames "
                + "%s%none surface %s (%d inside, sum %.1f)%n", read, loaded, bus, ordered, compared, inside[0], sum[0]);
        System.out.printf("plain read of memory over one surface: %s (aim 0.6 or more)%n", bus.over(compared));
        System.out.printf("the same, put together for it alone: %s%n", bus.over(ordered.and(compared)));
        System.out.printf("plain read of the files over all of it: %s (aim 0.5 or more)%n", read.over(loaded.and(ordered).and(compared)));
    }

    private static int compare(PointOrder order, SiteFrame frame, ProtectionSurface surface) {
        return new SurveyField(order.points(), PlacedPoints.of(order, frame), HORIZONTAL_M, VERTICAL_M).compare(surface).inside();
    }

    private static SurveyPoints points(int count, long seed) {
        SplittableRandom random = new SplittableRandom(20260601 + seed);
        double[] north = new double[count];
        double[] east = new double[count];
        double[] elevation = new double[count];
        for (int i = 0; i < count; i++) {
            north[i] = 47.2 + 0.2 * random.nextDouble();
            east[i] = -12.05 + 0.3 * random.nextDouble();
            elevation[i] = 60 + 20 * random.nextDouble();
        }
        return new SurveyPoints(false, north, east, elevation, List.of());
    }

    /** Reads every number on all processors. */
    private static double sum(SurveyPoints points) {
        int run = 1 << 13;
        double[][] columns = {points.north(), points.east(), points.elevationM()};
        return IntStream.range(0, (points.count() + run - 1) / run).parallel()
                .mapToDouble(part -> PlainRead.sum(columns, part * run, Math.min(points.count(), (part + 1) * run))).sum();
    }
}
