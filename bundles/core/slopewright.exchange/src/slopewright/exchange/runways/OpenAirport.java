package slopewright.exchange.runways;

import java.util.List;

/**
 * An airport of open data.
 *
 * @param code     the code that its table is led by
 * @param name     its name; the code where the data have none
 * @param isClosed whether the data say that it is closed
 * @param day      the day of its entry; empty where the data have none
 * @param runways  its runways
 */
public record OpenAirport(String code, String name, boolean isClosed, String day, List<OpenRunway> runways) {

    /** Copies the list. */
    public OpenAirport {
        runways = List.copyOf(runways);
    }
}
