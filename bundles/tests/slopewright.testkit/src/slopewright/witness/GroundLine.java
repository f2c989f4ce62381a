package slopewright.witness;

import java.util.ArrayList;
import java.util.List;

/**
 * A ground or runway profile: straight lines between stations, level beyond the ends.
 *
 * @param stations stations in ascending order of distance, at least one
 */
public record GroundLine(List<Station> stations) {
    private static final double FAR_M = 100_000;

    /** Copies the stations. */
    public GroundLine {
        stations = List.copyOf(stations);
    }

    /**
     * A station.
     *
     * @param alongM from the threshold in the landing direction, metres
     * @param heightM above the threshold, metres
     */
    public record Station(double alongM, double heightM) {
    }

    /** A level line at a height in metres above the threshold. */
    public static GroundLine level(double heightM) {
        return new GroundLine(List.of(new Station(0, heightM)));
    }

    /** A line through the threshold, rising in the landing direction for a positive slope, per cent. */
    public static GroundLine uniform(double slopePercent) {
        double rise = FAR_M * slopePercent / 100;
        return new GroundLine(List.of(new Station(-FAR_M, -rise), new Station(FAR_M, rise)));
    }

    /** Straight lines between pairs of distance and height, metres. */
    public static GroundLine of(double... pairs) {
        List<Station> list = new ArrayList<>();
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            list.add(new Station(pairs[i], pairs[i + 1]));
        }
        return new GroundLine(list);
    }

    /** Two distances and every station between them: from one to the next the line is straight, metres. */
    public List<Double> bendsM(double fromM, double toM) {
        List<Double> list = new ArrayList<>();
        list.add(fromM);
        for (Station station : stations) {
            if (station.alongM() > fromM && station.alongM() < toM) {
                list.add(station.alongM());
            }
        }
        list.add(toM);
        return list;
    }

    /** Height at a distance, metres. */
    public double heightM(double alongM) {
        Station before = stations.get(0);
        if (alongM <= before.alongM()) {
            return before.heightM();
        }
        for (Station here : stations) {
            if (alongM <= here.alongM()) {
                double part = (alongM - before.alongM()) / (here.alongM() - before.alongM());
                return before.heightM() + part * (here.heightM() - before.heightM());
            }
            before = here;
        }
        return before.heightM();
    }
}
