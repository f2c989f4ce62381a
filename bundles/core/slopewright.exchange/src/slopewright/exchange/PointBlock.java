package slopewright.exchange;

import java.nio.charset.StandardCharsets;

/**
 * A run of points in flat arrays; reused from block to block.
 *
 * @param alongM   metres along the frame
 * @param rightM   metres to the right
 * @param heightM  metres above the origin
 * @param idStart  where the id of a point starts in the text
 * @param idLength how long it is in bytes
 * @param text     the bytes that the points were read from
 */
public record PointBlock(double[] alongM, double[] rightM, double[] heightM, int[] idStart, int[] idLength, byte[] text) {

    /** Returns the id of a point. */
    public String id(int index) {
        return new String(text, idStart[index], idLength[index], StandardCharsets.UTF_8);
    }
}
