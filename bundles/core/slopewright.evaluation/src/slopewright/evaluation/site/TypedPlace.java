package slopewright.evaluation.site;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.geometry.CoordinateText;
import slopewright.geometry.CoordinateText.Axis;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * A place as people type it: latitude and longitude in any usual form ({@code 47.3, -11.9} or {@code 471800N 0115400W}), east and north on
 * the grid of the aerodrome ({@code E 1200 N 350}), or chainage and offset from a runway end or landing direction ({@code 09: 330 -60},
 * {@code 09: 330 60 left}): metres beyond its threshold or hover point in the landing direction, and to the right of its axis.
 */
public final class TypedPlace {

    private static final String NUMBER = "([+-]?\\d+(?:[.,]\\d*)?)\\s*(m|ft)?";
    private static final String BETWEEN = "\\s*(?:[,;]\\s+|;|\\s)\\s*";
    private static final Pattern GRID = Pattern.compile("E\\s*=?\\s*" + NUMBER + BETWEEN + "N\\s*=?\\s*" + NUMBER,
            Pattern.CASE_INSENSITIVE);
    private static final Pattern OFFSET = Pattern.compile("(.+?)\\s*:\\s*" + NUMBER + BETWEEN + NUMBER + "\\s*(left|right|l|r)?",
            Pattern.CASE_INSENSITIVE);

    private TypedPlace() {
    }

    /**
     * Reads a place; its elevation stays.
     *
     * @param text    what was typed
     * @param project whose runway ends and landing directions can be named
     * @param into    receives the coordinates, and loses those of the other kind
     * @throws PlaceException where the text is no place; the message says which forms there are, or what the end lacks
     */
    public static void read(String text, Project project, Place into) {
        String typed = text.strip();
        Matcher offset = OFFSET.matcher(typed);
        Matcher grid = GRID.matcher(typed);
        if (typed.isEmpty()) {
            clear(into);
        } else if (grid.matches()) {
            double east = metres(grid.group(1), grid.group(2));
            double north = metres(grid.group(3), grid.group(4));
            clear(into);
            into.setEastM(east);
            into.setNorthM(north);
        } else if (offset.matches() && isHost(project, offset.group(1))) {
            fromHost(host(project, offset.group(1)), offset, into);
        } else {
            geographic(typed, into);
        }
    }

    private static void clear(Place place) {
        place.setLatitudeDeg(null);
        place.setLongitudeDeg(null);
        place.setEastM(null);
        place.setNorthM(null);
    }

    private static double metres(String number, String unit) {
        return Double.parseDouble(number.replace(',', '.')) * ("ft".equalsIgnoreCase(unit) ? Lengths.METRES_PER_FOOT : 1);
    }

    private static List<ApproachHost> named(Project project, String designator) {
        return Projects.hosts(project).stream().filter(host -> designator.strip().equalsIgnoreCase(host.getDesignator())).toList();
    }

    private static boolean isHost(Project project, String designator) {
        return !named(project, designator).isEmpty() || !designator.matches("[\\d\\s.,°'\"-]*");
    }

    private static ApproachHost host(Project project, String designator) {
        List<ApproachHost> found = named(project, designator);
        if (found.size() != 1) {
            throw new PlaceException(found.isEmpty() ? Message.of("typed-place.no-host", Words.name(designator.strip()))
                    : Message.of("typed-place.several-hosts", Words.name(designator.strip()), Words.count(found.size())));
        }
        return found.get(0);
    }

    private static void fromHost(ApproachHost host, Matcher offset, Place into) {
        double along = metres(offset.group(2), offset.group(3));
        double right = metres(offset.group(4), offset.group(5));
        String side = offset.group(6) == null ? "" : offset.group(6).toLowerCase(Locale.ROOT);
        if (!side.isEmpty() && right < 0) {
            throw new PlaceException(Message.of("typed-place.sign-and-side", Words.name(offset.group())));
        }
        Double elevation = into.getElevationM();
        SiteFrame frame = frame(host);
        clear(into);
        frame.fromFrame(new FramePoint(along, side.startsWith("l") ? -right : right, 0), into);
        into.setElevationM(elevation);
    }

    private static SiteFrame frame(ApproachHost host) {
        try {
            return SiteFrame.of(host);
        } catch (SitingException e) {
            throw new PlaceException(e.reason(), e);
        }
    }

    private static void geographic(String typed, Place into) {
        RuntimeException first = null;
        for (int cut : cuts(typed)) {
            String south = typed.substring(0, cut).replaceAll("[,;]\\s*$", "");
            String west = typed.substring(cut).replaceAll("^[,;\\s]+", "");
            try {
                double latitude = CoordinateText.read(south, Axis.LATITUDE);
                double longitude = CoordinateText.read(west, Axis.LONGITUDE);
                clear(into);
                into.setLatitudeDeg(latitude);
                into.setLongitudeDeg(longitude);
                return;
            } catch (IllegalArgumentException e) {
                first = first == null ? e : first;
            }
        }
        throw new PlaceException(Message.of("typed-place.none", Words.name(typed)), first);
    }

    /** Returns where the text can be cut in two: at a letter of latitude, a comma or semicolon, or the middle one of the gaps. */
    private static List<Integer> cuts(String typed) {
        Matcher letter = Pattern.compile("^[NS].*?(?=[EW])|^[^NSEW]*[NS](?=[\\s,;])", Pattern.CASE_INSENSITIVE).matcher(typed);
        if (letter.find()) {
            return List.of(letter.end());
        }
        Matcher comma = Pattern.compile("[,;]\\s+|;").matcher(typed);
        if (comma.find()) {
            return List.of(comma.end());
        }
        List<Integer> gaps = Pattern.compile("\\s+").matcher(typed).results().map(found -> found.start()).toList();
        return gaps.size() % 2 == 0 ? List.of() : List.of(gaps.get(gaps.size() / 2));
    }

    /** Returns latitude and longitude in decimal degrees, or east and north, as they can be typed; empty where neither is known. */
    public static String text(Place place) {
        if (place.getLatitudeDeg() != null && place.getLongitudeDeg() != null) {
            return plain(place.getLatitudeDeg()) + ", " + plain(place.getLongitudeDeg());
        }
        return place.getEastM() == null || place.getNorthM() == null ? ""
                : "E " + plain(place.getEastM()) + " N " + plain(place.getNorthM());
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.9f", value).replaceAll("\\.?0+$", "");
    }
}
