package slopewright.siting.site;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;

/**
 * Many surveyed points in flat arrays, as they are kept in a file of their own beside the project and referenced by it with the hash of
 * its bytes. The arrays are shared, not copied, and must not be changed. The file is binary, numbers with the high byte first: the eight
 * letters {@code SWPOINT1}; one byte 0 for geodetic positions, 1 for a local plane; one byte 1 where ids follow, else 0; two bytes zero;
 * the number of points in four bytes; then all {@code north}, all {@code east} and all {@code elevationM} as IEEE 754 doubles; then for
 * each point the number of bytes of its id in two bytes and the id in UTF-8. Nothing follows.
 *
 * @param plane      whether the places are metres on the local plane of the aerodrome instead of latitude and longitude on WGS 84
 * @param north      latitudes in decimal degrees north positive, or metres north on the plane
 * @param east       longitudes in decimal degrees east positive, or metres east on the plane
 * @param elevationM elevations in metres in the vertical datum of the aerodrome
 * @param ids        names of the points, or empty where they have none
 */
public record SurveyPoints(boolean plane, double[] north, double[] east, double[] elevationM, List<String> ids) {

    /** Ending of a file of points, without the dot. */
    public static final String EXTENSION = "swpoints";

    /** The most points that one file may hold. */
    public static final int MOST_POINTS = 20_000_000;

    /** So many points are brought into a frame in one go. */
    private static final int RUN = 1 << 12;

    /**
     * Checks that the arrays belong together.
     *
     * @throws IllegalArgumentException where their lengths differ
     */
    public SurveyPoints {
        ids = ids instanceof PackedIds ? ids : List.copyOf(ids);
        boolean even = north.length == east.length && north.length == elevationM.length;
        if (!even || !ids.isEmpty() && ids.size() != north.length) {
            throw new IllegalArgumentException("a block of points needs as many norths, easts, elevations and ids");
        }
        if (north.length > MOST_POINTS) {
            throw new IllegalArgumentException("a block holds at most " + MOST_POINTS + " points");
        }
    }

    /**
     * The same points in the frame of a runway end or helipad, metres.
     *
     * @param alongM  in the landing direction
     * @param rightM  to the right of it
     * @param heightM above the threshold or TLOF
     */
    public record InFrame(double[] alongM, double[] rightM, double[] heightM) {
    }

    /** Returns the number of points. */
    public int count() {
        return north.length;
    }

    /** Returns the name of a point: its id, else its number counted from 1. */
    public String id(int index) {
        return ids.isEmpty() ? String.valueOf(index + 1) : ids.get(index);
    }

    /**
     * Brings all points into a frame, on several processors where there are any; the result does not depend on how many.
     *
     * @param frame the frame
     * @return the points in the same order
     * @throws SitingException where the points are on a plane and the aerodrome is not, or the other way round
     */
    public InFrame toFrame(SiteFrame frame) {
        if (frame.isPlane() != plane) {
            throw new SitingException(Message.of(plane ? "survey.on-a-plane" : "survey.not-on-a-plane"));
        }
        InFrame points = new InFrame(new double[count()], new double[count()], new double[count()]);
        Optional<FrameMap> map = plane ? Optional.empty() : FrameMap.over(frame, east, north);
        IntStream.range(0, (count() + RUN - 1) / RUN).parallel().forEach(run -> {
            double[] place = FrameMap.place();
            for (int i = run * RUN; i < Math.min(count(), (run + 1) * RUN); i++) {
                toFrame(frame, map, i, i, points, place);
            }
        });
        return points;
    }

    /** Brings one point into a frame, by a map of it where there is one, and puts it at an index of its own; the place is scratch. */
    void toFrame(SiteFrame frame, Optional<FrameMap> map, int i, int at, InFrame into, double[] place) {
        if (map.isPresent()) {
            map.get().map(east[i], north[i], place);
            into.alongM[at] = place[0];
            into.rightM[at] = place[1];
            into.heightM[at] = elevationM[i] - frame.originElevationM();
        } else {
            FramePoint point = frame.toFrame(new GridPoint(east[i], north[i]), elevationM[i]);
            into.alongM[at] = point.alongM();
            into.rightM[at] = point.rightM();
            into.heightM[at] = point.heightM();
        }
    }

    /** Returns the bytes of the file of these points; the same bytes for the same points. */
    public byte[] bytes() {
        return SurveyPointBytes.write(this);
    }

    /** Returns the SHA-256 hash of some bytes in lower-case hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        return SurveyPointBytes.sha256(bytes);
    }

    /**
     * Reads a file of points.
     *
     * @param file   the file
     * @param sha256 hash that its bytes must have, in hexadecimal digits
     * @return the points
     * @throws SitingException where the file is missing, damaged, or has another hash; the message names file and reason
     */
    public static SurveyPoints read(Path file, String sha256) {
        MessageDigest digest = SurveyPointBytes.digest();
        SurveyPoints found = null;
        Message fault = null;
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            long size = Files.size(file);
            if (size > SurveyPointBytes.MOST_BYTES) {
                throw refused(file, Message.of("survey.too-large"));
            }
            try {
                found = SurveyPointBytes.read(in, size);
            } catch (IllegalArgumentException e) {
                fault = Message.of("plain", Words.name(e.getMessage()));
            }
            readToTheEnd(in);
        } catch (NoSuchFileException e) {
            throw refused(file, Message.of("survey.no-file"));
        } catch (IOException e) {
            throw refused(file, Message.of("survey.unreadable", Words.name(e.getMessage())));
        }
        String hash = SurveyPointBytes.hex(digest.digest());
        if (!hash.equalsIgnoreCase(sha256)) {
            throw refused(file, Message.of("survey.other-hash", Words.name(hash), Words.name(sha256)));
        }
        if (fault != null) {
            throw refused(file, fault);
        }
        return found;
    }

    /** Returns the same hash of a file, whose bytes are never in memory together. */
    public static String sha256(Path file) throws IOException {
        MessageDigest digest = SurveyPointBytes.digest();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            readToTheEnd(in);
        }
        return SurveyPointBytes.hex(digest.digest());
    }

    /** What was not read is part of the hash all the same. */
    private static void readToTheEnd(InputStream in) throws IOException {
        byte[] rest = new byte[RUN];
        int got = 0;
        while (got >= 0) {
            got = in.read(rest);
        }
    }

    /**
     * Reads the points of a block of a project.
     *
     * @param block  the block
     * @param folder folder of the project file
     * @return the points
     * @throws SitingException where the block names no file beside the project, or the file is missing, damaged, or not the one that was
     *                         imported; the message names block, file and reason
     */
    public static SurveyPoints read(SurveyBlock block, Path folder) {
        if (block.getPath() == null || block.getSha256() == null) {
            throw refused(block, Message.of("survey.names-no-file"));
        }
        SurveyPoints points = read(beside(folder, block), block.getSha256());
        if (block.getPointCount() != null && block.getPointCount() != points.count()) {
            throw refused(block, Message.of("survey.other-count", Words.name(block.getPath()), Words.count(points.count()),
                    Words.count(block.getPointCount())));
        }
        return points;
    }

    private static SitingException refused(Path file, Message reason) {
        return new SitingException(Message.of("survey.of-file", Words.name(String.valueOf(file)), reason));
    }

    private static SitingException refused(SurveyBlock block, Message reason) {
        return new SitingException(Message.of("survey.of-block", ElementNames.of(block), reason));
    }

    private static Path beside(Path folder, SurveyBlock block) {
        String path = block.getPath();
        try {
            Path base = folder.toAbsolutePath().normalize();
            Path file = base.resolve(path).normalize();
            if (!Path.of(path).isAbsolute() && file.startsWith(base)) {
                return file;
            }
        } catch (InvalidPathException e) {
            throw refused(block, Message.of("survey.no-name", Words.name(path)));
        }
        throw refused(block, Message.of("survey.not-beside", Words.name(path)));
    }
}
