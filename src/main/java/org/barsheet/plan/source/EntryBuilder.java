package org.barsheet.plan.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.plan.Where;

/** Keyed values that grow as rows of a table are read. */
public final class EntryBuilder {

  private final Where where;
  private final Map<String, Where> keys = new LinkedHashMap<>();
  private final Map<String, Entry> values = new LinkedHashMap<>();
  private final Map<String, EntryBuilder> below = new LinkedHashMap<>();
  private final Map<String, List<EntryBuilder>> lists = new LinkedHashMap<>();

  public EntryBuilder(Where where) {
    this.where = where;
  }

  public boolean has(String key) {
    return keys.containsKey(key);
  }

  public void put(String key, Where keyWhere, Entry value) {
    keys.put(key, keyWhere);
    values.put(key, value);
  }

  /** Whether a key has a text of its own, so that nothing may stand below it. */
  public boolean isText(String key) {
    Entry value = values.get(key);
    return value != null && !value.isBlank();
  }

  /** The keyed values below a key; begun where there are none yet. */
  public EntryBuilder at(String key, Where keyWhere) {
    keys.putIfAbsent(key, keyWhere);
    if (!isText(key)) {
      values.remove(key);
    }
    return below.computeIfAbsent(key, none -> new EntryBuilder(keyWhere));
  }

  /** A new item of the list below a key. */
  public EntryBuilder append(String key, Where itemWhere) {
    keys.putIfAbsent(key, itemWhere);
    EntryBuilder item = new EntryBuilder(itemWhere);
    lists.computeIfAbsent(key, none -> new ArrayList<>()).add(item);
    return item;
  }

  public Entry.Keyed build() {
    List<Entry.Member> members = new ArrayList<>();
    keys.forEach((key, keyWhere) -> members.add(new Entry.Member(key, keyWhere, value(key))));
    return new Entry.Keyed(members, where);
  }

  private Entry value(String key) {
    Entry value = values.get(key);
    if (value != null) {
      return value;
    }
    EntryBuilder keyed = below.get(key);
    if (keyed != null) {
      return keyed.build();
    }
    List<EntryBuilder> items = lists.getOrDefault(key, List.of());
    return new Entry.Items(
        items.stream().map(item -> (Entry) item.build()).toList(), keys.getOrDefault(key, where));
  }
}
