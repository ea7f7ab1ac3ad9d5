package org.wadeplan.geo.draw;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.geo.lines.LineSet;

/**
 * What is drawn from: every mapped line from end to end, with what may be drawn and what is left out.
 *
 * @param lines in the round's metric system
 * @param stretches by line and then downstream, covering every line
 */
public record DrawFrame(LineSet lines, List<FrameStretch> stretches) {

    public DrawFrame {
        stretches = List.copyOf(stretches);
    }

    /** Length that may be drawn, in millimetres by stratum, sorted by number where strata are numbers, else by name. */
    SortedMap<String, Long> eligibleMm() {
        SortedMap<String, Long> lengths = new TreeMap<>(Strata.IN_ORDER);
        for (FrameStretch stretch : stretches) {
            if (stretch.standing() == Standing.ELIGIBLE && stretch.lengthMm() > 0) {
                lengths.merge(stretch.stratum(), stretch.lengthMm(), Long::sum);
            }
        }
        return lengths;
    }

    /** How much of the mapped length may be drawn, and why the rest may not. */
    public FrameLengths lengths() {
        Map<Standing, Long> byStanding = new EnumMap<>(Standing.class);
        SortedMap<String, Long> byReason = new TreeMap<>();
        for (FrameStretch stretch : stretches) {
            byStanding.merge(stretch.standing(), stretch.lengthMm(), Long::sum);
            if (stretch.standing() != Standing.ELIGIBLE) {
                String reason = stretch.standing().words() + ": " + String.join("; ", stretch.reasons());
                byReason.merge(reason, stretch.lengthMm(), Long::sum);
            }
        }
        return FrameLengths.of(byStanding, byReason);
    }

    /**
     * SHA-256 over every line's name and vertices to the millimetre and every stretch with its standing and stratum: two
     * frames with the same print give the same draw.
     */
    public String print() {
        MessageDigest digest = digest();
        ByteBuffer numbers = ByteBuffer.allocate(2 * Long.BYTES);
        for (int line = 0; line < lines.lineCount(); line++) {
            text(digest, lines.id(line));
            for (int vertex = lines.firstVertex(line); vertex < lines.endVertex(line); vertex++) {
                pair(digest, numbers, Math.round(lines.eastM(vertex) * 1000), Math.round(lines.northM(vertex) * 1000));
            }
        }
        for (FrameStretch stretch : stretches) {
            pair(digest, numbers, stretch.fromMm(), stretch.toMm());
            text(digest, stretch.line() + " " + stretch.standing().words() + " " + stretch.stratum());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void pair(MessageDigest digest, ByteBuffer numbers, long first, long second) {
        digest.update(numbers.clear().putLong(first).putLong(second).flip());
    }

    private static void text(MessageDigest digest, String words) {
        digest.update((words + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
