package slopewright.bench;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;

import slopewright.checks.Checks;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.exchange.survey.SurveyReading;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.siting.site.SurveyPoints;

/**
 * A million obstacles as CSV: read into a block, and the rows alone; and the cold check of a project with it, and reading the block. Each by the
 * clock and by what the processors spent on it together, for the clock stands for what else the machine does too. Every check is cold: it keeps
 * nothing of an earlier one but what the virtual machine has learnt, which the reading has too.
 */
public final class SurveyBench {

    private static final int POINTS = 1_000_000;
    private static final int TIMES = 8;
    /** So often that the compiler is done with the rules, which the reading does not need, in the later half. */
    private static final int CHECKS = 200;

    private SurveyBench() {
    }

    /** Runs with a project and a scratch folder in which a copy of it may be made. */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[1]);
        Path csv = folder.resolve("points.csv");
        write(csv);
        Project project = ProjectFile.load(Path.of(args[0]));
        SurveyOrigin origin = new SurveyOrigin("bench", Optional.of("2026-06-01"), Optional.empty(), OptionalDouble.of(1),
                OptionalDouble.of(0.5), SurveyHeights.AS_STATED);
        Took rows = Took.best(TIMES, () -> rows(csv));
        Took block = Took.best(TIMES, () -> SurveyReading.of(project, csv, origin, Optional.empty(), SurveyReading.Form.BLOCK).count());
        System.out.printf("rows alone %s, block %s%nblock over rows alone: %s (aim 2 or less)%n", rows, block, block.over(rows));
        SurveyReading reading = SurveyReading.of(project, csv, origin, Optional.empty(), SurveyReading.Form.BLOCK);
        reading.addTo(project);
        String name = project.getSurveyBlocks().get(project.getSurveyBlocks().size() - 1).getPath();
        Path file = Files.write(folder.resolve(name), reading.blockBytes().orElseThrow());
        Path saved = folder.resolve("bench.slopewright");
        ProjectFile.save(project, saved);
        String hash = SurveyPoints.sha256(Files.readAllBytes(file));
        Took early = Took.best(TIMES, () -> Checks.run(ProjectFile.load(saved), Optional.empty()).outcomes().size());
        Took loaded = Took.best(CHECKS, () -> SurveyPoints.read(file, hash).count());
        Took checked = Took.best(CHECKS, () -> Checks.run(ProjectFile.load(saved), Optional.empty()).outcomes().size());
        System.out.printf("block read %s, project with it read and checked %s%ncheck over block read: %s (aim 3 or less), while all is being compiled %s%n",
                loaded, checked, checked.over(loaded), early.over(loaded));
    }

    private static void write(Path csv) throws IOException {
        SplittableRandom random = new SplittableRandom(20260601);
        try (Writer out = Files.newBufferedWriter(csv)) {
            out.write("id,latitudeDeg,longitudeDeg,topElevationM,horizontalAccuracyM,verticalAccuracyM\n");
            for (int i = 0; i < POINTS; i++) {
                out.write(String.format(Locale.ROOT, "P%07d,%.8f,%.8f,%.2f,0.4,0.25%n", i, 47.2 + 0.2 * random.nextDouble(),
                        -12.05 + 0.3 * random.nextDouble(), 60 + 20 * random.nextDouble()));
            }
        }
    }

    private static int rows(Path csv) throws IOException {
        int letters = 0;
        try (CsvReader<CsvRecord> records = CsvReader.builder().ofCsvRecord(csv)) {
            for (CsvRecord row : records) {
                for (String field : row.getFields()) {
                    letters += field.length();
                }
            }
        }
        return letters;
    }
}
