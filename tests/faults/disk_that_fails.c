/* A disk that fails when told to, for programs started with LD_PRELOAD.
 *
 * FAULT_FOLDER  only files below it are concerned
 * FAULT_SWITCH  while this file is there, its first letter says what fails:
 *               s  fsync: input/output error      w  write: input/output error
 *               f  write: no space left           r  write and new files: read-only
 * FAULT_LOG     if set, each fsync and unlink below the folder is written there
 *
 * It includes nothing and links to nothing, so a bare compiler is enough.
 */
typedef unsigned long size_type;
typedef long offset_type;

extern void *dlsym(void *handle, const char *name);
extern int *__errno_location(void);
extern char *getenv(const char *name);
extern long readlink(const char *path, char *into, size_type size);
extern int snprintf(char *into, size_type size, const char *form, ...);
extern int close(int file);
extern long read(int file, void *into, size_type size);
extern size_type strlen(const char *text);
extern int strncmp(const char *one, const char *other, size_type size);

#define NEXT ((void *)-1L)
#define O_CREAT 0100
#define O_APPEND 02000
#define O_WRONLY 01
#define W_OK 2
#define EIO 5
#define ENOSPC 28
#define EROFS 30

typedef int (*open_call)(const char *, int, ...);
typedef int (*file_call)(int);
typedef int (*path_call)(const char *);
typedef int (*access_call)(const char *, int);
typedef long (*pwrite_call)(int, const void *, size_type, offset_type);
typedef long (*write_call)(int, const void *, size_type);

static open_call real_open(void) { return (open_call)dlsym(NEXT, "open64"); }
static write_call real_write(void) { return (write_call)dlsym(NEXT, "write"); }

static int fail(int number) {
    *__errno_location() = number;
    return -1;
}

static int is_ours(const char *path) {
    const char *folder = getenv("FAULT_FOLDER");
    return folder != 0 && strncmp(path, folder, strlen(folder)) == 0;
}

static int path_of(int file, char *into, size_type size) {
    char link[64];
    snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    long length = readlink(link, into, size - 1);
    if (length < 0) return 0;
    into[length] = 0;
    return is_ours(into);
}

static char fault(void) {
    const char *path = getenv("FAULT_SWITCH");
    char letter = 0;
    int file = path == 0 ? -1 : real_open()(path, 0);
    if (file < 0) return 0;
    if (read(file, &letter, 1) != 1) letter = 0;
    close(file);
    return letter;
}

static void note(const char *what, const char *path) {
    const char *target = getenv("FAULT_LOG");
    char line[4200];
    if (target == 0) return;
    int file = real_open()(target, O_WRONLY | O_CREAT | O_APPEND, 0600);
    if (file < 0) return;
    int length = snprintf(line, sizeof line, "%s %s\n", what, path);
    if (real_write()(file, line, (size_type)length) < 0) length = 0;
    close(file);
}

static int sync(int file, const char *name) {
    char path[4096];
    if (path_of(file, path, sizeof path)) {
        note("fsync", path);
        if (fault() == 's') return fail(EIO);
    }
    return ((file_call)dlsym(NEXT, name))(file);
}

static int write_fault(int file) {
    char path[4096];
    if (!path_of(file, path, sizeof path)) return 0;
    switch (fault()) {
        case 'w': return EIO;
        case 'f': return ENOSPC;
        case 'r': return EROFS;
    }
    return 0;
}

int fsync(int file) { return sync(file, "fsync"); }
int fdatasync(int file) { return sync(file, "fdatasync"); }

long pwrite64(int file, const void *from, size_type size, offset_type at) {
    int number = write_fault(file);
    if (number) return fail(number);
    return ((pwrite_call)dlsym(NEXT, "pwrite64"))(file, from, size, at);
}

long pwrite(int file, const void *from, size_type size, offset_type at) {
    return pwrite64(file, from, size, at);
}

long write(int file, const void *from, size_type size) {
    int number = write_fault(file);
    if (number) return fail(number);
    return real_write()(file, from, size);
}

static int opening(const char *path, int flags, int mode) {
    if ((flags & O_CREAT) && is_ours(path) && fault() == 'r') return fail(EROFS);
    return real_open()(path, flags, mode);
}

int open(const char *path, int flags, int mode) { return opening(path, flags, mode); }
int open64(const char *path, int flags, int mode) { return opening(path, flags, mode); }

int access(const char *path, int wanted) {
    if ((wanted & W_OK) && is_ours(path) && fault() == 'r') return fail(EROFS);
    return ((access_call)dlsym(NEXT, "access"))(path, wanted);
}

int unlink(const char *path) {
    if (is_ours(path)) note("unlink", path);
    return ((path_call)dlsym(NEXT, "unlink"))(path);
}
