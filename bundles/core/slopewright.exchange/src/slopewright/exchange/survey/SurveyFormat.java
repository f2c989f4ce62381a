package slopewright.exchange.survey;

import java.io.IOException;
import java.util.List;

import slopewright.exchange.ExchangeException;

/**
 * One format of survey files. A further format is one class that implements this, one line in
 * {@code META-INF/services/slopewright.exchange.survey.SurveyFormat} and its test. Formats hold no state.
 */
public interface SurveyFormat {

    /** Returns what people call it, with what it needs: {@code CSV with a header}. */
    String name();

    /** Returns the endings of its files in lower case, without the dot, the usual one first. */
    List<String> endings();

    /**
     * Reads a file and hands on its shapes one by one, so that a large file takes little memory. What is skipped is said to the input.
     *
     * @param input the file and what takes its shapes
     * @throws IOException       where the file cannot be read
     * @throws ExchangeException where it is faulty, or a shape is of no use; the message names file, line and reason
     */
    void read(SurveyInput input) throws IOException, ExchangeException;
}
