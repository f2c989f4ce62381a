package slopewright.exchange.internal.survey;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.io.UnsupportedEncodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the letters of an XML file strictly. The reader of the platform would print a line of its own on standard error where a byte is no
 * letter.
 */
final class XmlText {

    private static final int HEAD_BYTES = 256;
    private static final Pattern ENCODING = Pattern.compile("<\\?xml[^>]*encoding\\s*=\\s*[\"']([\\w.:-]+)[\"']");

    private XmlText() {
    }

    /**
     * Opens a text in the encoding of its byte order mark or declaration, else in UTF-8. What is no letter in it ends the reading with a
     * {@link java.nio.charset.CharacterCodingException}.
     *
     * @param in the bytes; closed with the reader
     * @throws UnsupportedEncodingException where nobody knows the encoding
     */
    static Reader open(InputStream in) throws IOException {
        PushbackInputStream bytes = new PushbackInputStream(new BufferedInputStream(in), HEAD_BYTES);
        byte[] head = bytes.readNBytes(HEAD_BYTES);
        Charset charset = charset(head);
        int mark = head.length > 2 && head[0] == (byte) 0xef && head[1] == (byte) 0xbb && head[2] == (byte) 0xbf ? 3 : 0;
        bytes.unread(head, mark, head.length - mark);
        return new InputStreamReader(bytes, charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    private static Charset charset(byte[] head) throws UnsupportedEncodingException {
        if (head.length > 1 && (head[0] == (byte) 0xfe && head[1] == (byte) 0xff || head[0] == (byte) 0xff && head[1] == (byte) 0xfe)) {
            return StandardCharsets.UTF_16;
        }
        Matcher declared = ENCODING.matcher(new String(head, StandardCharsets.ISO_8859_1));
        if (!declared.find()) {
            return StandardCharsets.UTF_8;
        }
        try {
            return Charset.forName(declared.group(1));
        } catch (IllegalArgumentException e) {
            throw new UnsupportedEncodingException(declared.group(1));
        }
    }
}
