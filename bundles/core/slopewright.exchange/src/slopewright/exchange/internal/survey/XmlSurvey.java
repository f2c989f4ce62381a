package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.util.List;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFormat;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/** Files that end in {@code .xml}: LandXML and AIXM 5.1, told by their first element. */
public final class XmlSurvey implements SurveyFormat {

    @Override
    public String name() {
        return "LandXML or AIXM 5.1";
    }

    @Override
    public List<String> endings() {
        return List.of("xml");
    }

    @Override
    public void read(SurveyInput input) throws IOException, ExchangeException {
        try (InputStream bytes = input.open(); Reader letters = XmlText.open(bytes)) {
            XmlEvents xml = new XmlEvents(input, letters);
            boolean any = xml.next();
            switch (any ? xml.begun() : "") {
                case "LandXML" -> new LandXmlPoints(input, xml).read();
                case "AIXMBasicMessage" -> new AixmStructures(input, xml).read();
                default -> throw input.fault(1, Message.said("survey-file.no-xml-survey",
                        any ? xml.begun() : Message.of("survey-file.missing")));
            }
        }
    }
}
