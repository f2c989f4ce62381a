package slopewright.exchange.internal.runways;

import java.util.List;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.runways.OpenAirport;

/** Open data in one form. */
public interface AirportTables {

    /**
     * Finds the airports of a code, in capital letters.
     *
     * @param code the code
     * @return those that are led by it, else those that have it as another code of theirs; several only where the data do not tell them
     *         apart
     * @throws ExchangeException where the file is broken; the message says where
     */
    List<OpenAirport> find(String code) throws ExchangeException;
}
