package slopewright.exchange.internal.survey;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.exchange.survey.SurveyShape;
import slopewright.exchange.survey.SurveyVertex;
import slopewright.messages.Message;

/**
 * The points ({@code CgPoint}) and the lines in space ({@code PntList3D}) of LandXML 1.2, each position north, east and elevation, in the
 * linear unit of the file; what is not named there is refused. Surfaces are skipped and counted: a mesh of triangles is no set of points.
 */
final class LandXmlPoints {

    private static final Map<String, Double> METRES = Map.of("meter", 1.0, "foot", 0.3048, "USSurveyFoot", 1200.0 / 3937, "millimeter",
            0.001, "kilometer", 1000.0);
    private static final int IN_SPACE = 3;

    private final SurveyInput input;
    private final XmlEvents xml;
    private double unitM = Double.NaN;
    private String feature = "";

    LandXmlPoints(SurveyInput input, XmlEvents xml) {
        this.input = input;
        this.xml = xml;
    }

    void read() throws IOException, ExchangeException {
        while (xml.next()) {
            switch (xml.begun()) {
                case "Metric", "Imperial" -> unit();
                case "CoordinateSystem" -> reference();
                case "CgPoint" -> point();
                case "PlanFeature", "Breakline" -> feature = xml.attribute("name");
                case "PntList3D" -> line();
                case "Surface" -> input.skip(Message.of("survey-file.skip.surfaces"));
                default -> {
                    // everything else says nothing of places
                }
            }
        }
    }

    private void unit() throws ExchangeException {
        String name = xml.attribute("linearUnit");
        Double found = METRES.get(name);
        if (found == null) {
            throw input.fault(xml.line(), Message.said("survey-file.unknown-unit", name));
        }
        unitM = found;
    }

    private void reference() throws ExchangeException {
        input.elevationsIn(xml.attribute("verticalDatum"));
        String code = xml.attribute("epsgCode");
        if (code.matches("\\d+")) {
            input.refer("EPSG:" + code);
        }
    }

    private List<Double> numbers(String text, long line) throws ExchangeException {
        if (Double.isNaN(unitM)) {
            throw input.fault(line, Message.of("survey-file.unit-late"));
        }
        List<Double> found = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            found.add(input.number(word, "position", line) * unitM);
        }
        return found;
    }

    private void point() throws IOException, ExchangeException {
        long line = xml.line();
        Map<SurveyShape.Fact, String> facts = new EnumMap<>(SurveyShape.Fact.class);
        String name = xml.attribute("name");
        String description = xml.attribute("desc").isEmpty() ? xml.attribute("code") : xml.attribute("desc");
        if (!name.isEmpty()) {
            facts.put(SurveyShape.Fact.ID, name);
        }
        if (!description.isEmpty()) {
            facts.put(SurveyShape.Fact.NAME, description);
        }
        boolean isReference = !xml.attribute("pntRef").isEmpty();
        String text = xml.text();
        if (isReference && text.isEmpty()) {
            input.skip(Message.of("survey-file.skip.references"));
            return;
        }
        try {
            List<Double> numbers = numbers(text, line);
            if (numbers.size() < 2 || numbers.size() > IN_SPACE) {
                throw input.fault(line, Message.said("survey-file.point-numbers", numbers.size()));
            }
            input.emit(SurveyShape.Kind.POINT, true, List.of(new SurveyVertex(numbers.get(0), numbers.get(1),
                    numbers.size() == IN_SPACE ? numbers.get(2) : Double.NaN)), facts, line);
        } catch (ExchangeException e) {
            input.refuse(e);
        }
    }

    private void line() throws IOException, ExchangeException {
        long line = xml.line();
        String text = xml.text();
        try {
            List<Double> numbers = numbers(text, line);
            if (numbers.size() % IN_SPACE != 0) {
                throw input.fault(line, Message.said("survey-file.line-numbers", numbers.size()));
            }
            List<SurveyVertex> vertices = new ArrayList<>();
            for (int i = 0; i < numbers.size(); i += IN_SPACE) {
                vertices.add(new SurveyVertex(numbers.get(i), numbers.get(i + 1), numbers.get(i + 2)));
            }
            input.emit(SurveyShape.Kind.LINE, true, vertices, feature.isEmpty() ? Map.of() : Map.of(SurveyShape.Fact.NAME, feature), line);
        } catch (ExchangeException e) {
            input.refuse(e);
        }
    }
}
