package org.drillsheaf.exchange.sheet;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.drillsheaf.Problems;
import org.drillsheaf.exchange.zip.GuardedZip;
import org.drillsheaf.exchange.zip.ZipLimits;
import org.jspecify.annotations.Nullable;

/**
 * Looks through the parts of an XLSX file before a spreadsheet reader gets it: no document types and with them no entities,
 * UTF-8 only, nothing from outside, no macros, no cell beyond the edge of a sheet, not too many rows.
 */
final class XlsxVetting {
    /** Own settings: many times a sheet of ten thousand drills. */
    private static final ZipLimits LIMITS = new ZipLimits(1_000, 200_000_000, 300_000_000);

    private static final List<String> ACTIVE =
            List.of("vbaproject", "/externallinks/", "/activex/", "/embeddings/", "/ctrlprops/", "/macrosheets/");
    private static final Pattern CELL = Pattern.compile("[A-Z]{1,3}[0-9]{1,7}");
    private static final Pattern OTHER_ENCODING = Pattern.compile(
            "^\\s*<\\?xml[^>]{0,100}encoding\\s*=\\s*[\"'](?!utf-8|us-ascii)", Pattern.CASE_INSENSITIVE);
    private static final String REMEDY = "Do not use this file; open the exported one and save it as XLSX";

    private final String file;
    private final Problems problems;
    private final XMLInputFactory factory = XMLInputFactory.newDefaultFactory();

    private XlsxVetting(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    }

    /** False when the file is refused; the reason then stands in {@code problems}. */
    static boolean isFair(Path path, Problems problems) {
        Optional<Map<String, byte[]>> parts = GuardedZip.read(path, LIMITS, XlsxVetting::isXml, problems);
        if (parts.isEmpty()) {
            return false;
        }
        XlsxVetting vetting = new XlsxVetting(String.valueOf(path), problems);
        if (!parts.get().containsKey("[Content_Types].xml")) {
            return vetting.refuse(
                    "[Content_Types].xml", "This zip file is no XLSX file", "Save the sheet as XLSX, or as CSV UTF-8");
        }
        return parts.get().entrySet().stream().allMatch(part -> vetting.isFair(part.getKey(), part.getValue()));
    }

    private static boolean isXml(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return small.endsWith(".xml") || small.endsWith(".rels") || small.endsWith(".vml");
    }

    private boolean isFair(String name, byte[] bytes) {
        String small = "/" + name.toLowerCase(Locale.ROOT);
        if (ACTIVE.stream().anyMatch(small::contains)) {
            return refuse(
                    name,
                    "The file holds macros, controls or links to other files",
                    "Save it as a plain XLSX without them");
        }
        if (!isXml(name)) {
            return true;
        }
        boolean hasZeros = bytes.length > 3 && (bytes[0] == 0 || bytes[1] == 0 || bytes[2] == 0 || bytes[3] == 0);
        String head = new String(bytes, 0, Math.min(bytes.length, 200), java.nio.charset.StandardCharsets.ISO_8859_1);
        if (hasZeros
                || head.startsWith("\u00ff\u00fe")
                || head.startsWith("\u00fe\u00ff")
                || OTHER_ENCODING
                        .matcher(head.replaceFirst("^\u00ef\u00bb\u00bf", ""))
                        .find()) {
            return refuse(name, "The part is not written in UTF-8", REMEDY);
        }
        return isFairXml(name, bytes);
    }

    private boolean isFairXml(String name, byte[] bytes) {
        int rows = 0;
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(bytes), "UTF-8");
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                    return refuse(name, "The part declares a document type, which no spreadsheet writes", REMEDY);
                }
                if (event != XMLStreamConstants.START_ELEMENT) {
                    continue;
                }
                String element = xml.getLocalName();
                if (element.equals("Relationship") && isFromOutside(xml)) {
                    return refuse(
                            name,
                            "The file fetches something from outside",
                            "Remove links to other files, and save it again");
                }
                if (element.equals("c") && isOutside(xml.getAttributeValue(null, "r"))) {
                    return refuse(name, "A cell lies beyond the edge of the sheet", REMEDY);
                }
                rows += element.equals("row") ? 1 : 0;
                if (rows > SheetTable.MOST_ROWS + 2) {
                    return refuse(name, SheetTable.TOO_MANY_ROWS, SheetTable.TOO_MANY_ROWS_REMEDY);
                }
            }
            return true;
        } catch (XMLStreamException e) {
            return refuse(name, "The part is damaged", REMEDY);
        }
    }

    /** A link in a cell that somebody may click is harmless here, since nobody follows it. */
    private static boolean isFromOutside(XMLStreamReader xml) {
        String mode = xml.getAttributeValue(null, "TargetMode");
        String type = xml.getAttributeValue(null, "Type");
        return "External".equalsIgnoreCase(mode) && (type == null || !type.endsWith("/hyperlink"));
    }

    private static boolean isOutside(@Nullable String cell) {
        if (cell == null) {
            return false;
        }
        return !CELL.matcher(cell).matches()
                || (cell.replaceAll("[0-9]", "").length() == 3 && cell.compareTo("XFE") >= 0);
    }

    private boolean refuse(String part, String what, String remedy) {
        problems.error(file + "!" + part, 0, what, remedy);
        return false;
    }
}
