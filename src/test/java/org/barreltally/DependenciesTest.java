package org.barreltally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The list of dependencies for people names what the build uses, no more and no less. */
class DependenciesTest {

  private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\| [^|]+ \\| [^|]+ \\|$");

  @Test
  void each_direct_dependency_stands_in_the_list_with_its_licence() throws Exception {
    Set<String> listed = new TreeSet<>();
    Matcher row = ROW.matcher(Files.readString(Path.of("src/docs/dependencies.md")));
    while (row.find()) {
      listed.add(row.group(1));
    }
    assertEquals(used(), listed);
  }

  private static Set<String> used() throws Exception {
    NodeList all =
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(Path.of("pom.xml").toFile())
            .getElementsByTagName("dependency");
    Set<String> used = new TreeSet<>();
    for (int n = 0; n < all.getLength(); n++) {
      Element dependency = (Element) all.item(n);
      Node list = dependency.getParentNode();
      if (list.getParentNode().getNodeName().equals("project")) {
        used.add(text(dependency, "groupId") + ":" + text(dependency, "artifactId"));
      }
    }
    return used;
  }

  private static String text(Element of, String name) {
    return of.getElementsByTagName(name).item(0).getTextContent().strip();
  }
}
