// what Ppmd7.c asks of it; the compiler has both
#define memset __builtin_memset
