package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.util.List;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;

/** The first sheet of a spreadsheet (Office Open XML, ECMA-376) with a header, see {@link TableRows}. */
public final class XlsxSurvey implements SurveyFormat {

    @Override
    public String name() {
        return "XLSX with a header";
    }

    @Override
    public List<String> endings() {
        return List.of("xlsx");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        TableRows rows = new TableRows(input);
        SpreadsheetRows.read(input::openBytes, (fields, line) -> {
            rows.take(fields, line);
            return true;
        }, reason -> input.fault(0, reason));
        rows.end();
    }
}
