package slopewright.exchange.settingout;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.internal.PlainNumbers;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Printable;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.LightUnit;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.CoordinateBasis;

/**
 * The lenses of all units as points for a total station: on the grid of the aerodrome, elevations in its vertical datum, metres to the
 * millimetre. Written as PNEZD (point number, northing, easting, elevation, description, no head) and as LandXML 1.2.
 *
 * @param points  the points, in the order of the schedule
 * @param project what they are taken from
 * @param made    which state of it
 */
public record PointList(List<Point> points, Project project, MadeFrom made) {

    private static final int DECIMALS = 3;
    private static final String LANDXML = "http://www.landxml.org/schema/LandXML-1.2";

    /**
     * One lens.
     *
     * @param number      number among the points, from 1
     * @param northM      northing on the grid, metres
     * @param eastM       easting on the grid, metres
     * @param elevationM  elevation, metres
     * @param name        indicator and unit
     * @param description what it is, with its setting
     */
    public record Point(int number, double northM, double eastM, double elevationM, String name, Message description) {
    }

    /** Copies the points. */
    public PointList {
        points = List.copyOf(points);
        Objects.requireNonNull(project);
        Objects.requireNonNull(made);
    }

    /**
     * Takes the points of a project.
     *
     * @param evaluation the project with what its aids give
     * @param day        the day of the schedule
     * @return the points
     * @throws SitingException where a unit has no place on a grid or no elevation; none is left out without a word
     */
    public static PointList of(ProjectEvaluation evaluation, LocalDate day) {
        List<Point> points = new ArrayList<>();
        for (SettingOutUnit line : SettingOutSchedule.of(evaluation, day).units()) {
            Place place = line.place();
            LightUnit unit = line.unit();
            String name = Projects.label(line.aid().aid()) + " " + Projects.label(unit);
            if (place.getEastM() == null || place.getNorthM() == null) {
                throw new SitingException(Message.of("points.no-grid", Words.name(name)));
            }
            if (unit.getLensElevationM() == null) {
                throw new SitingException(Message.of("points.no-elevation", Words.name(name)));
            }
            points.add(new Point(points.size() + 1, place.getNorthM(), place.getEastM(), unit.getLensElevationM(), name,
                    unit.getSettingDeg() == null ? Message.of("points.lens", Words.name(name))
                            : Message.of("points.lens-set", Words.name(name), Words.deg(unit.getSettingDeg()))));
        }
        return new PointList(points, evaluation.project(), MadeFrom.of(evaluation));
    }

    /** Returns the points with what else is known of where they come from. */
    public PointList from(MadeFrom origin) {
        return new PointList(points, project, origin);
    }

    /**
     * Returns the points as lines of PNEZD; commas and letters beyond ASCII of a description become blanks and question marks. The form
     * has no head, so each description ends with what the points were made from.
     */
    public byte[] pnezd(MessageRenderer renderer) {
        StringBuilder lines = new StringBuilder();
        points.forEach(point -> lines.append(point.number()).append(',').append(metres(point.northM())).append(',')
                .append(metres(point.eastM())).append(',').append(metres(point.elevationM())).append(',')
                .append((renderer.render(point.description()) + "; " + made.brief(renderer)).replace("\u00b0", "d")
                        .replaceAll("[,\"\\p{Cntrl}]", " ").replaceAll("[^\\x20-\\x7e]", "?"))
                .append("\r\n"));
        return lines.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static String metres(double value) {
        return PlainNumbers.fixed(value, DECIMALS);
    }

    /**
     * Returns the points as LandXML 1.2, with the program and the project file that they come from.
     *
     * @param day      the day of the document
     * @param renderer the language of what it says of each point
     */
    public byte[] landXml(LocalDate day, MessageRenderer renderer) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("LandXML");
            xml.writeDefaultNamespace(LANDXML);
            attributes(xml, "version", "1.2", "date", day.toString(), "time", "00:00:00", "language",
                    renderer.language().getDisplayLanguage(Locale.ENGLISH), "readOnly", "false");
            xml.writeStartElement("Units");
            xml.writeEmptyElement("Metric");
            attributes(xml, "areaUnit", "squareMeter", "linearUnit", "meter", "volumeUnit", "cubicMeter", "temperatureUnit", "celsius",
                    "pressureUnit", "HPA", "angularUnit", "decimal degrees", "directionUnit", "decimal degrees");
            xml.writeEndElement();
            Aerodrome aerodrome = project.getAerodrome();
            xml.writeEmptyElement("CoordinateSystem");
            String reference = Optional.ofNullable(aerodrome.getCoordinateReference()).orElse("");
            attributes(xml, "desc", renderer.write(CoordinateBasis.of(aerodrome).words()), "epsgCode",
                    reference.replaceFirst("^EPSG:", ""), "verticalDatum", Optional.ofNullable(aerodrome.getVerticalDatum()).orElseGet(
                            () -> renderer.write(Words.term("report.not-known"))));
            xml.writeEmptyElement("Project");
            attributes(xml, "name", String.valueOf(project.getName()), "desc", renderer.render(Message.of("points.made", Words.name(
                    String.valueOf(project.getRevision())), made.fileWords(), Words.name(made.ruleSetId())))
                    + made.verdict().map(said -> ", " + renderer.render(Message.of("made-from.verdict", said))).orElse(""));
            xml.writeEmptyElement("Application");
            attributes(xml, "name", "slopewright", "version", Program.VERSION);
            xml.writeStartElement("CgPoints");
            for (Point point : points) {
                xml.writeStartElement("CgPoint");
                attributes(xml, "name", point.name(), "oID", String.valueOf(point.number()), "desc", renderer.render(point.description()));
                xml.writeCharacters(String.format(Locale.ROOT, "%s %s %s", metres(point.northM()), metres(point.eastM()),
                        metres(point.elevationM())));
                xml.writeEndElement();
            }
            xml.writeEndElement();
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a document in memory cannot be written", e);
        }
        return out.toByteArray();
    }

    private static void attributes(XMLStreamWriter xml, String... pairs) throws XMLStreamException {
        for (int i = 0; i < pairs.length; i += 2) {
            xml.writeAttribute(pairs[i], Printable.of(pairs[i + 1]));
        }
    }
}
