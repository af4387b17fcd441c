"""Reads 3MF files in the strict mode of lib3mf (Debian's lib3mf1), an implementation of the core specification apart from
this program, and prints what it found in each as one line of JSON. A file that is refused has an error."""
import ctypes
import json
import sys

library = ctypes.CDLL("lib3MF.so.1")
MILLIMETER = 1


class Refused(Exception):
    pass


def call(name, *words):
    result = getattr(library, "lib3mf_" + name)(*words)
    if result != 0:
        raise Refused(f"{name}: {result & 0xFFFFFFFF:#010x}")


def number(name, handle):
    value = ctypes.c_uint32(0)
    call(name, handle, ctypes.byref(value))
    return value.value


def text(name, handle, *place):
    buffer, needed = ctypes.create_string_buffer(1000), ctypes.c_ulong(0)
    call(name, handle, *place, buffer, ctypes.c_ulong(len(buffer)), ctypes.byref(needed))
    return buffer.value.decode("utf-8")


def each(name, model):
    iterator = ctypes.c_void_p()
    call(name, model, ctypes.byref(iterator))
    kind = "builditemiterator" if name == "model_getbuilditems" else "resourceiterator"
    while True:
        more = ctypes.c_uint32(0)
        call(kind + "_movenext", iterator, ctypes.byref(more))
        if not more.value:
            return
        current = ctypes.c_void_p()
        call(kind + "_getcurrent", iterator, ctypes.byref(current))
        yield current


def finding_of(path):
    model, reader = ctypes.c_void_p(), ctypes.c_void_p()
    call("createmodel", ctypes.byref(model))
    call("model_queryreader", model, b"3mf", ctypes.byref(reader))
    call("reader_setstrictmodeactive", reader, ctypes.c_uint32(1))
    call("reader_readfromfileutf8", reader, path.encode("utf-8"))
    return {
        "warnings": number("reader_getwarningcount", reader),
        "inMillimetres": number("model_getunit", model) == MILLIMETER,
        "buildItems": sum(1 for _ in each("model_getbuilditems", model)),
        "metadata": {
            text("model_getmetadatakeyutf8", model, ctypes.c_uint32(place)): text(
                "model_getmetadatavalueutf8", model, ctypes.c_uint32(place)
            )
            for place in range(number("model_getmetadatacount", model))
        },
        "objects": [
            {
                "name": text("object_getnameutf8", mesh),
                "triangles": number("meshobject_gettrianglecount", mesh),
                "closedAndOriented": number("meshobject_ismanifoldandoriented", mesh) == 1,
            }
            for mesh in each("model_getmeshobjects", model)
        ],
    }


for path in sys.argv[1:]:
    try:
        print(json.dumps(finding_of(path)))
    except Refused as refusal:
        print(json.dumps({"error": str(refusal)}))
