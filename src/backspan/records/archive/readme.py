"""The page that explains an archive to whoever opens it, perhaps without this program.

It is part of format 1 and never changes: an archive is compared with it byte for byte. Another
text is another format.
"""

TEXT = """\
WHAT THIS FILE IS

This archive holds the whole record of one building site: who stated what about the suspended
stages of that site, when, and on which evidence. It is a plain tar file, not compressed. The
files in it, in this order:

README.txt      this page
entries.jsonl   the entries: one signed statement a line, in the order in which they came
receipts.jsonl  one line for each entry: its place, its hash, when it came, the head by then
heads.json      heads that were signed, with the key and the signature
project.json    what the entries add up to: the site as it stood at the end (may be absent)
evidence/...    photographs, papers and other files that entries rest on, each named by its hash
manifest.json   the list of all the other files with their sizes and hashes

All text is UTF-8. A line ends with one line feed (byte 10), which is not part of an entry. Every
JSON text is in one form: keys sorted, no blanks between, no line break within, characters beyond
ASCII written as they are. "Hash" always means SHA-256, written in 64 hexadecimal digits.

HOW TO CHECK IT BY HAND

Unpack it into an empty folder with any tar program, and go to that folder.

1. The files against the list. Each row of "members" in manifest.json gives name, size and
   sha256. Compare with

       sha256sum README.txt entries.jsonl receipts.jsonl heads.json project.json evidence/*

2. The list itself. "seal" in manifest.json is the hash of manifest.json without it:

       sed 's/"seal":"[0-9a-f]*",//' manifest.json | sha256sum

   (The file has no line feed at its end. A sed that adds one gives another hash.)

3. The evidence. The hash of each file in the folder "evidence" is its name. Entries name what
   they rest on in their list "evidence".

4. The entries. The hash of an entry is the hash of its line without the line feed. For line 7:

       sed -n 7p entries.jsonl | tr -d '\\n' | sha256sum

   It stands as "entry" in line 7 of receipts.jsonl.

5. The chain of each device. An entry names its "device" and its number there, "sequence", from
   1. "before" is the hash of the entry with the number before it on the same device, and null in
   the first. "seen" lists the last entry known of every other device. "order" is one more than
   the highest "order" among the entry before and those in "seen".

6. The heads. The head after place 7 is the hash of a JSON list of four: the head after place 6,
   the number 7, the entry's hash, and the time it came, all as in receipts.jsonl:

       printf '%s' '["HEAD-6",7,"ENTRY-7","RECEIVED-7"]' | sha256sum

   The head before place 1 is 64 zeros. Whoever kept a head, on paper or on a phone, finds it in
   receipts.jsonl at its place, or the record was changed after that head was given out.

7. The signed heads. A signature in heads.json is Ed25519, by "key", over the bytes of the JSON
   list ["backspan head", site, place, head, at]. Compare the key with one that you have from
   elsewhere: this archive cannot prove whose key it is.

WHAT IT CANNOT SHOW

A record that was cut short before any head left the building, or an entry that was never taken
in. A name in an entry is what a device stated; it is not a personal signature.
"""
#: The text as the archive holds it.
README_BYTES = TEXT.encode("ascii")
