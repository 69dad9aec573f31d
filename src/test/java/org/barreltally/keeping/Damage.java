package org.barreltally.keeping;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** What happens to files: by disks and cables, by spreadsheets, and by people who know how. */
enum Damage {
  CUT,
  BIT_IN_A_LOCAL_HEADER,
  BIT_IN_THE_DATA,
  BIT_IN_THE_DIRECTORY,
  BIT_IN_THE_END,
  BLOCK_OF_ZEROS,
  BLOCKS_SWAPPED,
  BLOCK_TWICE,
  JUNK_AFTERWARDS,
  ROW_LOST,
  ROW_LOST_AND_SIGNED,
  BYTE_CHANGED_AND_SIGNED,
  TABLES_SWAPPED_AND_SIGNED,
  MANIFEST_NUMBER,
  MANIFEST_WORD_LOST,
  MANIFEST_TEXT;

  private static final int CENTRAL_RECORD = 46;
  private static final int LOCAL_RECORD = 30;
  private static final int END_RECORD = 22;

  /** Writes the file as this leaves it. */
  Path done(Path good, Path target, Random random) throws IOException {
    if (ordinal() < ROW_LOST.ordinal()) {
      return Files.write(target, raw(Files.readAllBytes(good), random));
    }
    Forged apart = Forged.from(good);
    List<String> tables = new ArrayList<>();
    apart.manifest.get("tables").forEach(table -> tables.add(table.get("name").asText()));
    tables.removeIf(table -> apart.csv(table).indexOf("\r\n") == apart.csv(table).length() - 2);
    String table = tables.get(random.nextInt(tables.size()));
    String other = tables.get(random.nextInt(tables.size()));
    switch (this) {
      case ROW_LOST -> apart.change(table, csv -> withoutOne(csv, random));
      case ROW_LOST_AND_SIGNED -> apart.changeAndSign(table, csv -> withoutOne(csv, random));
      case BYTE_CHANGED_AND_SIGNED -> apart.changeAndSign(table, csv -> otherByte(csv, random));
      case TABLES_SWAPPED_AND_SIGNED -> {
        String text = apart.csv(table);
        apart.changeAndSign(table, csv -> apart.csv(other));
        apart.changeAndSign(other, csv -> text);
      }
      case MANIFEST_NUMBER -> otherNumber(apart.table(table), random);
      case MANIFEST_WORD_LOST ->
          loseWord(random.nextBoolean() ? apart.manifest : apart.table(table), random);
      default -> {
        byte[] manifest =
            apart.manifest.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
        flip(manifest, 0, manifest.length, random);
        return apart.write(target, manifest);
      }
    }
    return apart.write(target);
  }

  private byte[] raw(byte[] file, Random random) {
    int end = file.length - END_RECORD;
    ByteBuffer zip = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    int directory = zip.getInt(end + 16); // APPNOTE.TXT 4.3.16: offset of the central directory
    int block = 1 + random.nextInt(600);
    int from = random.nextInt(file.length - block);
    int to = random.nextInt(file.length - block);
    switch (this) {
      case CUT -> {
        return Arrays.copyOf(file, random.nextInt(file.length));
      }
      case BIT_IN_A_LOCAL_HEADER -> {
        int local = local(zip, directory, end, random);
        flip(file, local, local + LOCAL_RECORD + zip.getShort(local + 26), random);
      }
      case BIT_IN_THE_DATA -> flip(file, 0, directory, random);
      case BIT_IN_THE_DIRECTORY -> flip(file, directory, end, random);
      case BIT_IN_THE_END -> flip(file, end, file.length, random);
      case BLOCK_OF_ZEROS -> Arrays.fill(file, from, from + block, (byte) 0);
      case BLOCKS_SWAPPED -> {
        byte[] kept = Arrays.copyOfRange(file, from, from + block);
        System.arraycopy(file, to, file, from, block);
        System.arraycopy(kept, 0, file, to, block);
      }
      case BLOCK_TWICE -> {
        byte[] longer = Arrays.copyOf(file, file.length + block);
        System.arraycopy(file, from, longer, from + block, file.length - from);
        return longer;
      }
      default -> {
        byte[] longer = Arrays.copyOf(file, file.length + block);
        byte[] junk = new byte[block];
        random.nextBytes(junk);
        System.arraycopy(junk, 0, longer, file.length, block);
        return longer;
      }
    }
    return file;
  }

  /** Where one of the files in the zip begins, as the directory says (APPNOTE.TXT 4.3.12). */
  private static int local(ByteBuffer zip, int directory, int end, Random random) {
    List<Integer> begins = new ArrayList<>();
    for (int at = directory; at < end; ) {
      begins.add(zip.getInt(at + 42));
      at += CENTRAL_RECORD + zip.getShort(at + 28) + zip.getShort(at + 30) + zip.getShort(at + 32);
    }
    return begins.get(random.nextInt(begins.size()));
  }

  private static void flip(byte[] bytes, int from, int to, Random random) {
    bytes[from + random.nextInt(to - from)] ^= (byte) (1 << random.nextInt(8));
  }

  private static String withoutOne(String csv, Random random) {
    List<String> lines = new ArrayList<>(List.of(csv.split("(?<=\r\n)")));
    lines.remove(1 + random.nextInt(lines.size() - 1));
    return String.join("", lines);
  }

  private static String otherByte(String csv, Random random) {
    int head = csv.indexOf("\r\n") + 2;
    int at = head + random.nextInt(csv.length() - head);
    char other = "0123456789abcdefTZ-,:\"\n".charAt(random.nextInt(23));
    return csv.substring(0, at) + other + csv.substring(at + 1);
  }

  private static void otherNumber(ObjectNode table, Random random) {
    String word = random.nextBoolean() ? "rows" : "bytes";
    long[] others = {-1, 0, table.get(word).asLong() + 1, Integer.MAX_VALUE, Long.MAX_VALUE};
    table.put(word, others[random.nextInt(others.length)]);
  }

  private static void loseWord(ObjectNode object, Random random) {
    List<String> words = new ArrayList<>();
    object.fieldNames().forEachRemaining(words::add);
    String word = words.get(random.nextInt(words.size()));
    JsonNode value = object.get(word);
    if (value instanceof ArrayNode list && !list.isEmpty()) {
      list.remove(random.nextInt(list.size()));
    } else {
      object.remove(word);
    }
  }
}
