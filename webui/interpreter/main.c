// MicroPython for one page: the texts of modules go in, one function is called with text and answers with text or JSON.
#include <math.h>
#include <string.h>

#include "py/builtin.h"
#include "py/compile.h"
#include "py/gc.h"
#include "py/lexer.h"
#include "py/objstr.h"
#include "py/runtime.h"

#define EXPORTED(name) __attribute__((export_name(#name)))
#define FRAMES (16 * 1024) // bytes for running functions: about 200 of them, one inside the other
#define MOST_FILES (500)
#define NO_SUCH_FILE (2) // ENOENT

// Room for `size` bytes, 0 where there is none. What is put there goes to `add`, `run` or `ask` and is theirs from then on.
EXPORTED(room) void *room(size_t size) {
    return malloc(size);
}

// --- in the place of what the C library has: 5 kB of a first visit ---

// Whole powers are products, so that those of ten are exact up to 1e22, as a number that is read asks for; all others are within
// some last bits. The library's is within one, by tables of 4 kB.
double pow(double base, double power) {
    double whole = fabs(power);
    if (power == 0.5) {
        return sqrt(base);
    }
    if (whole > 1024 || whole != floor(whole)) {
        return exp(power * log(base));
    }
    double found = 1;
    for (unsigned left = whole; left != 0; left >>= 1, base *= base) {
        if (left & 1) {
            found *= base;
        }
    }
    return power < 0 ? 1 / found : found;
}

// What sines, cosines and tangents of angles above a million turns need; the engine's are below one.
int __rem_pio2_large(double *angle, double *rest, int exponent, int count, int precision) {
    (void)angle, (void)exponent, (void)count, (void)precision;
    rest[0] = rest[1] = NAN;
    return 0;
}

// --- modules ---
typedef struct {
    const char *path, *text;
    size_t letters, size;
} file_t;

static file_t files[MOST_FILES];
static size_t count;

// One module: its path ("shared/moves.py") and its text. It is compiled when it is imported.
EXPORTED(add) int add(const char *path, size_t letters, const char *text, size_t size) {
    if (count == MOST_FILES) {
        return 1;
    }
    files[count++] = (file_t) { path, text, letters, size };
    return 0;
}

mp_import_stat_t mp_import_stat(const char *path) {
    size_t letters = strlen(path);
    for (const file_t *file = files; file < files + count; ++file) {
        if (file->letters >= letters && memcmp(file->path, path, letters) == 0) {
            if (file->letters == letters) {
                return MP_IMPORT_STAT_FILE;
            }
            if (file->path[letters] == '/') {
                return MP_IMPORT_STAT_DIR;
            }
        }
    }
    return MP_IMPORT_STAT_NO_EXIST;
}

mp_lexer_t *mp_lexer_new_from_file(qstr name) {
    for (const file_t *file = files; file < files + count; ++file) {
        if (file->letters == qstr_len(name) && memcmp(file->path, qstr_str(name), file->letters) == 0) {
            return mp_lexer_new_from_str_len(name, file->text, file->size, 0);
        }
    }
    mp_raise_OSError(NO_SUCH_FILE);
}

static mp_obj_t no_files(size_t given, const mp_obj_t *values, mp_map_t *named) {
    mp_raise_OSError(NO_SUCH_FILE);
}
MP_DEFINE_CONST_FUN_OBJ_KW(mp_builtin_open_obj, 1, no_files);

// Which interpreter this is, as programs know it by the name `interpreter`: it goes out with each answer.
const MP_DEFINE_STR_OBJ(interpreter_obj, "MicroPython " MICROPY_VERSION_STRING);

// --- what was said last: an answer, or why there is none ---
static char *said;
static size_t said_size, said_room;

EXPORTED(text) const char *text(void) {
    return said;
}

EXPORTED(size) size_t size(void) {
    return said_size;
}

static void say(void *unused, const char *words, size_t letters) {
    if (said_size + letters > said_room) {
        said_room = 2 * (said_size + letters);
        said = realloc(said, said_room);
        if (!said) {
            __builtin_trap();
        }
    }
    memcpy(said + said_size, words, letters);
    said_size += letters;
}

static const mp_print_t sayer = { NULL, say };

// --- interned words, found by their hash: MicroPython looks at each of thousands for every text that is made ---
#define LONGEST_WORD (255) // letters; a longer text is never interned
#define FEWEST_SLOTS (4096)
typedef struct {
    uint32_t hash, word;
} slot_t;

static slot_t *slots;
static size_t slots_made, indexed;

static uint32_t hash_of(const char *words, size_t letters) { // FNV-1a
    uint32_t hash = 2166136261u;
    for (size_t i = 0; i < letters; ++i) {
        hash = (hash ^ (uint8_t)words[i]) * 16777619u;
    }
    return hash;
}

// The slot of a word, or the empty one where it would stand.
static slot_t *slot_of(const char *words, size_t letters, uint32_t hash) {
    for (size_t at = hash % slots_made;; at = (at + 1) % slots_made) {
        if (!slots[at].word) {
            return &slots[at];
        }
        if (slots[at].hash == hash) {
            size_t length;
            const char *found = (const char *)qstr_data(slots[at].word, &length);
            if (length == letters && memcmp(found, words, letters) == 0) {
                return &slots[at];
            }
        }
    }
}

// Words only ever come, at the end: those that came since the last time are put in first.
static void index_words(size_t words) {
    if (2 * words > slots_made) {
        for (slots_made = FEWEST_SLOTS; slots_made < 4 * words;) {
            slots_made *= 2;
        }
        free(slots);
        slots = calloc(slots_made, sizeof(slot_t));
        if (!slots) {
            __builtin_trap();
        }
        indexed = 1; // the first is none
    }
    for (; indexed < words; ++indexed) {
        size_t letters;
        const char *word = (const char *)qstr_data(indexed, &letters);
        uint32_t hash = hash_of(word, letters);
        *slot_of(word, letters, hash) = (slot_t) { hash, indexed };
    }
}

qstr qstr_find_strn(const char *words, size_t letters) {
    if (letters > LONGEST_WORD) {
        return MP_QSTRnull;
    }
    index_words(MP_STATE_VM(last_pool)->total_prev_len + MP_STATE_VM(last_pool)->len);
    return slot_of(words, letters, hash_of(words, letters))->word;
}

// --- the interpreter ---
static bool full;

// Called where the heap is full. What runs now holds pointers where nobody can look: the heap grows, and is swept later.
void gc_collect(void) {
    full = true;
}

size_t gc_get_max_new_split(void) {
    return 128 * 1024 * 1024;
}

// Frees what nothing holds any more.
EXPORTED(sweep) void sweep(void) {
    full = false;
    gc_collect_start();
    gc_collect_end();
}

// Once, before anything else. heap: bytes to start with
EXPORTED(begin) void begin(size_t heap) {
    char *frames = malloc(FRAMES), *first = malloc(heap);
    if (!frames || !first) {
        __builtin_trap();
    }
    mp_pystack_init(frames, frames + FRAMES);
    gc_init(first, first + heap);
    mp_init();
}

typedef void (*work_t)(const char *given, size_t letters);

// 0, or 1 where the work raised an exception: what was said tells which.
static int done(work_t work, char *given, size_t letters) {
    nlr_buf_t nlr;
    said_size = 0;
    if (nlr_push(&nlr) == 0) {
        work(given, letters);
        nlr_pop();
        free(given);
        return 0;
    }
    said_size = 0; // of an answer that was begun
    mp_obj_print_exception(&sayer, MP_OBJ_FROM_PTR(nlr.ret_val)); // one that cannot be printed ends in a trap
    free(given);
    return 1;
}

static void run_program(const char *program, size_t letters) {
    mp_lexer_t *lexer = mp_lexer_new_from_str_len(MP_QSTR__lt_stdin_gt_, program, letters, 0);
    mp_parse_tree_t tree = mp_parse(lexer, MP_PARSE_FILE_INPUT);
    mp_call_function_0(mp_compile(&tree, MP_QSTR__lt_stdin_gt_, false));
}

static void call_with(const char *asked, size_t letters) {
    mp_obj_t answer = mp_call_function_1(mp_load_global(MP_QSTR_call), mp_obj_new_str(asked, letters));
    mp_obj_print_helper(&sayer, answer, mp_obj_is_str(answer) ? PRINT_STR : PRINT_JSON);
}

// Runs a program.
EXPORTED(run) int run(char *program, size_t letters) {
    return done(run_program, program, letters);
}

// Calls the program's function `call` with a text; it answers with a text, or with what is said as JSON.
EXPORTED(ask) int ask(char *asked, size_t letters) {
    if (full) {
        sweep();
    }
    return done(call_with, asked, letters);
}

void nlr_jump_fail(void *value) {
    __builtin_trap();
}
