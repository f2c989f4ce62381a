package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.util.List;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * The first sheet of a spreadsheet (Office Open XML, ECMA-376) with a header, see {@link TableRows}. A further sheet with places
 * is refused: what stands there would be left out.
 */
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
        List<SpreadsheetRows.Unread> others = SpreadsheetRows.read(input::openBytes, (fields, line) -> {
            rows.take(fields, line);
            return true;
        }, reason -> input.fault(0, reason));
        rows.end();
        for (SpreadsheetRows.Unread other : others) {
            if (TableRows.isHeader(input, other.header())) {
                throw input.fault(0, Message.said("survey-file.further-sheet", other.name()));
            }
            input.skip(Message.said("survey-file.skip.sheet", other.name()));
        }
    }
}
