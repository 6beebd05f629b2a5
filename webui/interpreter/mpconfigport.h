// What of MicroPython the engine needs: the language with double floats and long integers; math, json,
// collections. No files, no printing, no time, no random numbers, no other modules.
#ifndef PORT_H
#define PORT_H

#include <alloca.h>
#include <stdint.h>
#include <stdlib.h>

#define MICROPY_CONFIG_ROM_LEVEL (MICROPY_CONFIG_ROM_LEVEL_CORE_FEATURES)
#define MICROPY_MPHALPORT_H "mpconfigport.h" // no hardware
#define MP_STATE_PORT MP_STATE_VM

typedef int mp_int_t; // of the size of a pointer
typedef unsigned mp_uint_t;
typedef long mp_off_t;
#define MP_SSIZE_MAX (0x7fffffff)

// main.c has one that takes its place
#ifdef WEAK_WORDS
#pragma weak qstr_find_strn
#endif

// Nobody can look for pointers in the locals of WebAssembly. So the heap grows while a call lasts, and is swept between two.
#define MICROPY_ENABLE_GC (1)
#define MICROPY_GC_SPLIT_HEAP (1)
#define MICROPY_GC_SPLIT_HEAP_AUTO (1)
#define MICROPY_GC_ALLOC_THRESHOLD (0)
#define MICROPY_ENABLE_PYSTACK (1)
#define MICROPY_STACK_CHECK (0) // frames of Python run out first; what C calls of itself ends in a trap of the stack
#define MICROPY_NLR_SETJMP (1)

extern const struct _mp_obj_str_t interpreter_obj; // in main.c
#define MICROPY_PORT_BUILTINS { MP_ROM_QSTR(MP_QSTR_interpreter), MP_ROM_PTR(&interpreter_obj) },

#define MICROPY_ENABLE_COMPILER (1)
#define MICROPY_ENABLE_EXTERNAL_IMPORT (1)
#define MICROPY_ENABLE_SOURCE_LINE (1)
#define MICROPY_ERROR_REPORTING (MICROPY_ERROR_REPORTING_TERSE) // what was raised, and where: 0.8 kB of a first visit
#define MICROPY_OPT_LOAD_ATTR_FAST_PATH (1)
#define MICROPY_OPT_MAP_LOOKUP_CACHE (1)
#define MICROPY_USE_INTERNAL_ERRNO (1)
#define MP_PLAT_PRINT_STRN(text, size) ((void)0) // nothing is printed
#define MICROPY_HELPER_REPL (0)
#define MICROPY_MODULE_WEAK_LINKS (0)

#define MICROPY_FLOAT_IMPL (MICROPY_FLOAT_IMPL_DOUBLE)
#define MICROPY_LONGINT_IMPL (MICROPY_LONGINT_IMPL_MPZ)
#define MICROPY_PY_FSTRINGS (0)
#define MICROPY_PY_BUILTINS_STR_UNICODE (1)
#define MICROPY_PY_BUILTINS_STR_PARTITION (1)
#define MICROPY_PY_BUILTINS_STR_SPLITLINES (0)
#define MICROPY_PY_BUILTINS_STR_OP_MODULO (0) // texts are filled by `format`
#define MICROPY_PY_BUILTINS_FROZENSET (0)
#define MICROPY_PY_BUILTINS_PROPERTY (0)
#define MICROPY_PY_BUILTINS_COMPLEX (0)
#define MICROPY_PY_BUILTINS_BYTEARRAY (0)
#define MICROPY_PY_BUILTINS_EVAL_EXEC (0)
#define MICROPY_PY_ASYNC_AWAIT (0)
#define MICROPY_PY_ASSIGN_EXPR (0)
#define MICROPY_PY_GENERATOR_PEND_THROW (0)
#define MICROPY_PY___FILE__ (0)
#define MICROPY_COMP_CONST (0)

#define MICROPY_PY_MATH (1)
#define MICROPY_PY_MATH_CONSTANTS (1)
#define MICROPY_PY_MATH_SPECIAL_FUNCTIONS (0) // erf, gamma and the like; log10 with them
#define MICROPY_PY_MATH_ISCLOSE (0)
#define MICROPY_PY_CMATH (0)
#define MICROPY_PY_JSON (1)
#define MICROPY_PY_JSON_SEPARATORS (0)
#define MICROPY_PY_IO (1) // json reads through it
#define MICROPY_PY_IO_IOBASE (0)
#define MICROPY_PY_IO_BYTESIO (0)
#define MICROPY_PY_COLLECTIONS (1)
#define MICROPY_PY_GC (0)
#define MICROPY_PY_SYS (0)
#define MICROPY_PY_STRUCT (0)
#define MICROPY_PY_ARRAY (0)
#define MICROPY_PY_MICROPYTHON (0)

#endif
