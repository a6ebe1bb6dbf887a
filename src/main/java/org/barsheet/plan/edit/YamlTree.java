package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.barsheet.plan.source.YamlEvents;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/** A YAML text that was read without fault, as nodes that know their places. */
final class YamlTree {

  private final String text;
  private final int[] characters;
  private final Iterator<Event> events;
  private final Map<String, YamlNode> anchors = new HashMap<>();
  private final List<YamlNode.Alias> aliases = new ArrayList<>();
  private final YamlNode root;
  private int flows;

  /** Where the collection that was read last ends. */
  private int last;

  YamlTree(String text) {
    this.text = text;
    this.characters = characters(text);
    this.events = YamlEvents.of(text);
    events.next(); // the stream
    events.next(); // its only document
    this.root = node(events.next());
  }

  YamlNode root() {
    return root;
  }

  /** Every place that repeats another value, in order. */
  List<YamlNode.Alias> aliases() {
    return aliases;
  }

  /** Where each of its code points, which marks count, begins. */
  private static int[] characters(String text) {
    int[] characters = new int[text.codePointCount(0, text.length()) + 1];
    int at = 0;
    for (int i = 0; i < characters.length; i++) {
      characters[i] = at;
      at += at < text.length() ? Character.charCount(text.codePointAt(at)) : 0;
    }
    return characters;
  }

  private int start(Event event) {
    return characters[event.getStartMark().orElseThrow().getIndex()];
  }

  private int end(Event event) {
    return characters[event.getEndMark().orElseThrow().getIndex()];
  }

  private YamlNode node(Event event) {
    if (event instanceof AliasEvent alias) {
      YamlNode of = Objects.requireNonNull(anchors.get(alias.getAlias().getValue()));
      YamlNode.Alias node = new YamlNode.Alias(start(event), end(event), flows > 0, of);
      aliases.add(node);
      return node;
    }
    YamlNode node = event instanceof ScalarEvent scalar ? scalar(scalar) : collection(event);
    anchor(event).ifPresent(name -> anchors.put(name, node));
    return node;
  }

  private static Optional<String> anchor(Event event) {
    return ((NodeEvent) event).getAnchor().map(Anchor::getValue);
  }

  private YamlNode scalar(ScalarEvent scalar) {
    boolean bare = scalar.getAnchor().isEmpty() && scalar.getTag().isEmpty();
    int value = bare ? start(scalar) : behindProperties(start(scalar), end(scalar));
    int end = end(scalar);
    while (isBlock(scalar) && end > value && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return new YamlNode.Scalar(
        start(scalar), value, end, flows > 0, anchor(scalar), scalar.getValue());
  }

  private static boolean isBlock(ScalarEvent scalar) {
    return scalar.isLiteral() || scalar.isFolded();
  }

  /** Where a value begins that has an anchor or a tag before it (YAML 1.2.2, 6.9). */
  private int behindProperties(int start, int end) {
    int at = start;
    while (at < end && (text.charAt(at) == '&' || text.charAt(at) == '!')) {
      while (at < end && !Character.isWhitespace(text.charAt(at))) {
        at++;
      }
      while (at < end && Character.isWhitespace(text.charAt(at))) {
        at++;
      }
    }
    return at;
  }

  private YamlNode collection(Event event) {
    CollectionStartEvent start = (CollectionStartEvent) event;
    flows += start.isFlow() ? 1 : 0;
    YamlNode node = start.getEventId() == Event.ID.SequenceStart ? items(start) : keyed(start);
    flows -= start.isFlow() ? 1 : 0;
    return node;
  }

  private YamlNode items(CollectionStartEvent start) {
    List<YamlNode> items = items();
    int end = items.isEmpty() ? last : items.get(items.size() - 1).end();
    boolean flow = start.isFlow();
    return new YamlNode.Items(start(start), flow ? last : end, flow, items);
  }

  private YamlNode keyed(CollectionStartEvent start) {
    List<YamlNode.Member> members = members();
    int end = members.isEmpty() ? last : members.get(members.size() - 1).value().end();
    boolean flow = start.isFlow();
    return new YamlNode.Keyed(start(start), flow ? last : end, flow, members);
  }

  private List<YamlNode> items() {
    List<YamlNode> items = new ArrayList<>();
    for (Event event = events.next(); !isEnd(event); event = events.next()) {
      items.add(node(event));
    }
    return items;
  }

  private List<YamlNode.Member> members() {
    List<YamlNode.Member> members = new ArrayList<>();
    for (Event event = events.next(); !isEnd(event); event = events.next()) {
      YamlNode key = node(event);
      YamlNode named = key instanceof YamlNode.Alias alias ? alias.of() : key;
      String name = named instanceof YamlNode.Scalar scalar ? scalar.text() : "";
      members.add(new YamlNode.Member(name, key.start(), key.end(), node(events.next())));
    }
    return members;
  }

  private boolean isEnd(Event event) {
    last = end(event);
    return event.getEventId() == Event.ID.SequenceEnd || event.getEventId() == Event.ID.MappingEnd;
  }
}
