package org.barsheet.plan.table;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Which other parts of a workbook a part refers to (ECMA-376 Part 2, relationships). */
final class Relations extends DefaultHandler {

  private final String folder;
  private final Map<String, String> byId = new LinkedHashMap<>();
  private final Map<String, String> byKind = new LinkedHashMap<>();

  private Relations(String folder) {
    this.folder = folder;
  }

  /**
   * The relations of a part.
   *
   * @param part its name, or "" for the workbook's file as a whole
   */
  static Relations of(BookFile book, String part) {
    int slash = part.lastIndexOf('/') + 1;
    Relations relations = new Relations(part.substring(0, slash));
    String name = part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
    if (book.has(name)) {
      book.read(name, relations);
    }
    return relations;
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    String id = attributes.getValue("Id");
    String target = attributes.getValue("Target");
    String type = attributes.getValue("Type");
    if (name.equals("Relationship") && id != null && target != null && type != null) {
      String part = target.startsWith("/") ? target.substring(1) : folder + target;
      byId.putIfAbsent(id, part);
      byKind.putIfAbsent(type.substring(type.lastIndexOf('/') + 1), part);
    }
  }

  Optional<String> withId(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  Optional<String> ofKind(String kind) {
    return Optional.ofNullable(byKind.get(kind));
  }
}
