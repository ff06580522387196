package org.adumbrate.linework.svg;

import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * XML parsers that open nothing outside the file, and let the entities that it defines for itself, as some programs do for
 * the names of their namespaces, add only little to it.
 */
final class SvgParsers {
    private static final String[] OUTSIDE = {
        "http://xml.org/sax/features/external-general-entities",
        "http://xml.org/sax/features/external-parameter-entities",
        "http://apache.org/xml/features/nonvalidating/load-external-dtd"
    };

    private static final String LIMIT = "http://www.oracle.com/xml/jaxp/properties/";
    private static final String EXPANSIONS = "entityExpansionLimit";
    private static final String MOST_EXPANSIONS = "10000";
    private static final String EXPANDED = "totalEntitySizeLimit";
    private static final String MOST_EXPANDED = "1000000";

    private SvgParsers() {}

    /** One that keeps the document. */
    static DocumentBuilder keeping() throws ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        for (String feature : OUTSIDE) {
            factory.setFeature(feature, false);
        }
        factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        factory.setAttribute(LIMIT + EXPANSIONS, MOST_EXPANSIONS);
        factory.setAttribute(LIMIT + EXPANDED, MOST_EXPANDED);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
        return builder;
    }

    /** One that tells what it meets, and forgets it. */
    static SAXParser passing() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        for (String feature : OUTSIDE) {
            factory.setFeature(feature, false);
        }
        SAXParser parser = factory.newSAXParser();
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        parser.setProperty(LIMIT + EXPANSIONS, MOST_EXPANSIONS);
        parser.setProperty(LIMIT + EXPANDED, MOST_EXPANDED);
        return parser;
    }
}
