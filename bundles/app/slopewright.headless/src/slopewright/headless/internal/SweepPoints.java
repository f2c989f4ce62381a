package slopewright.headless.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import picocli.CommandLine.Option;
import slopewright.evaluation.sweep.PointSweep;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.exchange.survey.SurveyReading;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SurveyPoints;

/** The obstacles and the terrain of a whole country that many runway ends are held against, and what is said of them. */
final class SweepPoints {

    @Option(names = "--against", arity = "1..*", paramLabel = "FILE",
            description = "survey files of points, as 'import' takes them: obstacles, terrain, clouds")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--grid", paramLabel = "EPSG:N", description = "coordinate reference of east and north in them")
    private String grid;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class, description = "day of the survey, of the form 2026-01-31")
    private LocalDate date;

    @Option(names = "--horizontal-accuracy-m", paramLabel = "M", converter = NumberWord.Accuracy.class,
            description = "accuracy of places where a file says nothing")
    private Double horizontalM;

    @Option(names = "--vertical-accuracy-m", paramLabel = "M", converter = NumberWord.Accuracy.class,
            description = "accuracy of elevations where a file says nothing")
    private Double verticalM;

    @Option(names = "--vertical-datum", paramLabel = "NAME",
            description = "vertical datum of their elevations; an aerodrome in another one is not evaluated")
    private String verticalDatum;

    @Option(names = "--complete", description = "they hold everything that stands between the outermost of them: a surface in which none "
            + "lies is clear, and not a place that nobody surveyed")
    private boolean complete;

    private final List<String> hashes = new ArrayList<>();

    /** Returns whether there is anything. */
    boolean isEmpty() {
        return files.isEmpty();
    }

    /** Returns whether the points are said to hold everything that stands among them. */
    boolean isComplete() {
        return complete;
    }

    /** Returns whether elevations of an aerodrome count from where those of the points do. */
    boolean hasDatum(String other) {
        return other != null && other.strip().equals(verticalDatum.strip());
    }

    /** Returns the files by their SHA-256, those that were read. */
    List<String> hashes() {
        return hashes;
    }

    /** Reads the files; nothing of them is assumed. */
    PointSweep read() {
        if (date == null || verticalDatum == null) {
            throw new UsageException("--against needs --date and --vertical-datum: nothing of a survey is assumed");
        }
        List<SurveyReading> readings = new ArrayList<>();
        double across = 0;
        double up = 0;
        for (Path file : files) {
            SurveyReading reading = read(file);
            SurveyBlock block = (SurveyBlock) reading.elements().get(0);
            if (block.getHorizontalAccuracyM() == null || block.getVerticalAccuracyM() == null) {
                throw new UsageException(file + " does not state how accurate it is: say --horizontal-accuracy-m and "
                        + "--vertical-accuracy-m");
            }
            across = Math.max(across, Math.abs(block.getHorizontalAccuracyM()));
            up = Math.max(up, Math.abs(block.getVerticalAccuracyM()));
            readings.add(reading);
        }
        return new PointSweep(together(readings.stream().map(reading -> reading.points().orElseThrow()).toList()), across, up);
    }

    private SurveyReading read(Path file) {
        Project anywhere = SlopewrightFactory.eINSTANCE.createProject();
        Aerodrome field = SlopewrightFactory.eINSTANCE.createAerodrome();
        field.setCoordinateReference("WGS84");
        field.setVerticalDatum(verticalDatum);
        anywhere.setAerodrome(field);
        SurveyOrigin origin = new SurveyOrigin(file.getFileName().toString(), Optional.of(date.toString()), Optional.ofNullable(grid),
                accuracy(horizontalM), accuracy(verticalM), SurveyHeights.AS_STATED, Optional.of(verticalDatum));
        try {
            hashes.add(SurveyPoints.sha256(file));
            SurveyReading reading = SurveyReading.of(anywhere, file, origin, Optional.empty(), SurveyReading.Form.BLOCK);
            reading.refuseFaults(false);
            return reading;
        } catch (ExchangeException e) {
            throw InputException.of(e);
        } catch (IOException e) {
            throw new InputException(file + ": cannot be read: " + e.getMessage());
        }
    }

    private static OptionalDouble accuracy(Double metres) {
        return metres == null ? OptionalDouble.empty() : OptionalDouble.of(metres);
    }

    private static SurveyPoints together(List<SurveyPoints> parts) {
        if (parts.size() == 1) {
            return parts.get(0);
        }
        int count = parts.stream().mapToInt(SurveyPoints::count).reduce(0, Math::addExact);
        double[][] all = new double[3][count];
        List<String> ids = new ArrayList<>();
        int at = 0;
        for (SurveyPoints part : parts) {
            double[][] columns = {part.north(), part.east(), part.elevationM()};
            for (int i = 0; i < columns.length; i++) {
                System.arraycopy(columns[i], 0, all[i], at, part.count());
            }
            for (int i = 0; i < part.count(); i++) {
                ids.add(part.id(i));
            }
            at += part.count();
        }
        try {
            return new SurveyPoints(false, all[0], all[1], all[2], ids);
        } catch (IllegalArgumentException e) {
            throw new InputException("the files of --against together: " + e.getMessage());
        }
    }
}
