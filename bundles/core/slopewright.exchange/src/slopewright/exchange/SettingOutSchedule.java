package slopewright.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/** Every light unit with what a field party needs to set it out. */
public final class SettingOutSchedule {

    private static final List<String> COLUMNS = List.of("runway end or approach", "indicator", "unit", "along m", "right m",
            "lens elevation m", "height above ground m", "latitude", "longitude", "east m", "north m", "bearing of the axis", "setting",
            "setting deg", "frangible");

    private SettingOutSchedule() {
    }

    /** Returns the rows of a project, the names of the columns first. */
    public static List<List<String>> rows(Project project) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(COLUMNS);
        for (ApproachHost host : Projects.hosts(project)) {
            Optional<SiteFrame> frame = frame(host);
            for (ApproachAid aid : host.getAids()) {
                for (LightUnit unit : aid.getUnits()) {
                    rows.add(row(host, aid, unit, frame));
                }
            }
        }
        return rows;
    }

    private static Optional<SiteFrame> frame(ApproachHost host) {
        try {
            return Optional.of(SiteFrame.of(host));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    private static List<String> row(ApproachHost host, ApproachAid aid, LightUnit unit, Optional<SiteFrame> frame) {
        List<String> row = new ArrayList<>(List.of(Projects.label(host), Projects.label(aid), String.valueOf(unit.getLabel()),
                number(unit.getAlongM(), 3), number(unit.getRightM(), 3), number(unit.getLensElevationM(), 3),
                number(unit.getHeightAboveGroundM(), 2)));
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        boolean known = frame.isPresent() && unit.getAlongM() != null && unit.getRightM() != null;
        if (known) {
            frame.get().fromFrame(new FramePoint(unit.getAlongM(), unit.getRightM(), 0), place);
        }
        row.addAll(List.of(number(place.getLatitudeDeg(), 8), number(place.getLongitudeDeg(), 8), number(place.getEastM(), 3),
                number(place.getNorthM(), 3), known ? number(bearing(frame.get(), aid, unit), 3) : "",
                unit.getSettingDeg() == null ? "" : Angles.format(unit.getSettingDeg()), number(unit.getSettingDeg(), 5),
                unit.getFrangible() == null ? "" : unit.getFrangible() ? "yes" : "no"));
        return row;
    }

    private static double bearing(SiteFrame frame, ApproachAid aid, LightUnit unit) {
        double turn = (aid.getAxisTurnDeg() == null ? 0 : aid.getAxisTurnDeg())
                + (unit.getAzimuthOffsetDeg() == null ? 0 : unit.getAzimuthOffsetDeg());
        return Angles.normaliseBearingDeg(frame.bearingDeg() + 180 + turn);
    }

    private static String number(Double value, int decimals) {
        return value == null ? "" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** Returns the schedule as comma-separated values. */
    public static byte[] csv(Project project) {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows(project)) {
            text.append(String.join(",", row.stream().map(SettingOutSchedule::quoted).toList())).append('\n');
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String quoted(String text) {
        return text.indexOf(',') >= 0 || text.indexOf('"') >= 0 ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }

    /**
     * Returns the schedule as an Office Open XML workbook with numbers as numbers.
     *
     * @throws IOException where it can not be put together
     */
    public static byte[] xlsx(Project project) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<List<String>> rows = rows(project);
        try (Workbook book = new Workbook(out, "Slopewright", "1.0"); Worksheet sheet = book.newWorksheet("Setting out")) {
            for (int r = 0; r < rows.size(); r++) {
                for (int c = 0; c < rows.get(r).size(); c++) {
                    put(sheet, r, c, rows.get(r).get(c));
                }
            }
            sheet.range(0, 0, 0, COLUMNS.size() - 1).style().bold().set();
            sheet.freezePane(0, 1);
        }
        return out.toByteArray();
    }

    private static void put(Worksheet sheet, int row, int column, String text) {
        if (row > 0 && text.matches("-?\\d+\\.\\d+")) {
            sheet.value(row, column, Double.parseDouble(text));
        } else {
            sheet.value(row, column, text);
        }
    }
}
