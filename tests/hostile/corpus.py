"""All hostile folders, by kind."""

from tests.hostile import (
    corpus_files,
    corpus_letters,
    corpus_pictures,
    corpus_words,
    corpus_yaml,
)

CASES = (
    *corpus_yaml.CASES,
    *corpus_files.CASES,
    *corpus_letters.CASES,
    *corpus_words.CASES,
    *corpus_pictures.CASES,
)
